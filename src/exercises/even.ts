import type { Kind, Part, Slip } from './kind.ts';

/**
 * The same kind with all its members in one order, those that it does not have as undefined. Authors write members as
 * they like; engines find them faster where all kinds, parts and slips have one shape, and drawing asks for them often.
 */
export const evenKind = <Item>(kind: Kind<Item>): Kind<Item> => ({
  id: kind.id,
  version: kind.version,
  title: kind.title,
  lesson: kind.lesson,
  level: kind.level,
  draw: kind.draw,
  sound: kind.sound,
  pattern: kind.pattern,
  question: kind.question,
  picture: kind.picture,
  solved: kind.solved,
  wrong: kind.wrong,
  drawnTrue: kind.drawnTrue,
  parts: kind.parts.map(evenPart),
});

const evenPart = <Item>(part: Part<Item>): Part<Item> => ({
  id: part.id,
  quantity: part.quantity,
  unit: part.unit,
  decimals: part.decimals,
  label: part.label,
  value: part.value,
  sum: part.sum,
  possible: part.possible,
  form: part.form,
  readTo: part.readTo,
  slips: part.slips.map(evenSlip),
  solution: part.solution,
  hint: part.hint,
  weight: part.weight,
});

const evenSlip = <Item>(slip: Slip<Item>): Slip<Item> => ({
  id: slip.id,
  confuses: slip.confuses,
  value: slip.value,
  text: slip.text,
  picture: slip.picture,
});
