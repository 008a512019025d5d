import { drawnForm, isList, type DrawnForm } from './forms/form.ts';
import { isEntryOf } from './forms/read-list-entry.ts';
import { givensOf, type Given } from './givens.ts';
import type { Earlier, Kind, Part, Road, Slip } from './kind.ts';
import type { Phrase } from './phrase.ts';
import type { Picture } from './pictures/picture.ts';
import { randomOf } from './random.ts';
import { reckon, type Reckoned } from './reckon.ts';

/** A wrong road of a drawn exercise, and where it ends. */
export interface DrawnSlip {
  readonly id: string;
  readonly confuses: string;
  readonly value: number;
  /** Where it ends for somebody whose earlier values are these. */
  readonly follow: (earlier: Earlier) => number;
  readonly text: () => Phrase;
  /** The road drawn beside the right one, both from the true earlier values or from one's own; nothing where it cannot be seen. */
  readonly picture?: ((own?: Earlier) => Picture | undefined) | undefined;
}

/** What does not hang on the item, but for the form: that comes with the options or the scale of the item. */
export type Definition = Omit<
  Part<never>,
  'value' | 'slips' | 'solution' | 'hint' | 'form' | 'readTo'
> & { readonly form?: DrawnForm };

/** A part of a drawn exercise, ready to be graded. Values in SI. */
export interface DrawnPart {
  readonly definition: Definition;
  readonly answer: number;
  readonly tolerance: number;
  /** Its known wrong roads, made when somebody asks for them. */
  readonly slips: () => readonly DrawnSlip[];
  /** What this part comes to for somebody whose earlier values are these. */
  readonly follow: (earlier: Earlier) => number;
  readonly solution: () => Phrase;
  readonly hint: () => Phrase;
}

/** An exercise drawn from a seed. What is stored of it is `kind`, `version` and `seed`. */
export interface Exercise {
  readonly kind: string;
  readonly version: number;
  readonly seed: string;
  readonly title: string;
  readonly item: object;
  readonly givens: readonly Given[];
  readonly question: () => Phrase;
  readonly parts: readonly DrawnPart[];
  /** What stands beside the question. */
  readonly picture?: (() => Picture) | undefined;
  /** What stands beside the worked solution. */
  readonly solved?: (() => Picture) | undefined;
  /** Equal for exercises of a kind that are equally hard: the item's pattern and the signs of the answers. */
  readonly signature: () => string;
  /** How many items were drawn until one kept its distances, this one included. */
  readonly draws: number;
}

/** More draws than this and the kind is faulty. */
export const MOST_DRAWS = 50;

/** With own values so many times the true ones no car could be drawn. */
const FARTHEST = 5;

const pictureOf =
  <Item>(picture: (item: Item) => Picture, item: Item) =>
  (): Picture =>
    picture(item);

/**
 * Draws the exercise of a kind and a seed; redraws from the same generator until the item is sound and every
 * answer keeps its distance from nought, from the givens and from the slips.
 *
 * @throws Error when fifty draws give nothing: the kind is faulty
 */
export function drawExercise<Item extends object>(kind: Kind<Item>, seed: string): Exercise {
  const { id, version, title } = kind;
  const random = randomOf(`knucklebook/1|${id}|${version}|${seed}`);
  for (let round = 0; round < MOST_DRAWS; round++) {
    const item = kind.draw(random);
    if (!kind.sound(item)) continue;
    const givens = givensOf(item);
    const parts = drawnParts(kind, item, givens);
    if (!parts) continue;
    return {
      kind: id,
      version,
      seed,
      title,
      item,
      givens,
      question: () => kind.question(item),
      parts,
      picture: kind.picture && pictureOf(kind.picture, item),
      solved: kind.solved && pictureOf(kind.solved, item),
      signature: () => [kind.pattern?.(item), ...parts.map(signOf)].filter(Boolean).join(' '),
      draws: round + 1,
    };
  }
  throw new Error(`exercise kind ${id} found no sound item for seed ${seed}`);
}

function drawnParts<Item>(
  kind: Kind<Item>,
  item: Item,
  givens: readonly Given[],
): readonly DrawnPart[] | undefined {
  return reckon(kind.parts, item, givens)?.map((numbers) => drawnPart(numbers, item, kind));
}

function drawnPart<Item>(numbers: Reckoned<Item>, item: Item, kind: Kind<Item>): DrawnPart {
  const { part, earlier, answer, tolerance } = numbers;
  const form = part.form && drawnForm(part.form, item, earlier);
  let slips: readonly DrawnSlip[] | undefined;
  return {
    definition: definitionOf(part, form),
    answer,
    tolerance,
    slips: () => (slips ??= drawnSlips(numbers, item, kind)),
    follow: (own) => part.value(item, own),
    solution: () => part.solution(item, earlier, answer),
    hint: () => part.hint(item),
  };
}

function drawnSlips<Item>(
  { part, earlier, answer, slipValues }: Reckoned<Item>,
  item: Item,
  kind: Kind<Item>,
): readonly DrawnSlip[] {
  const { id, slips, form } = part;
  const drawn = slips.map((slip, i) => {
    const road = { part: id, slip: slip.id, value: slipValues[i] ?? NaN, answer, earlier };
    return {
      id: slip.id,
      confuses: slip.confuses,
      value: road.value,
      follow: (own: Earlier) => slip.value(item, own),
      text: () => slip.text(item),
      picture: slip.picture
        ? pictureOf(slip.picture, item)
        : kind.wrong && ((own?: Earlier) => roadPicture(kind, item, { part, slip, road, own })),
    };
  });
  // What a list does not have in this item, nobody can choose.
  return form && form.kind !== 'set' ? drawn.filter(({ value }) => !Number.isNaN(value)) : drawn;
}

function definitionOf<Item>(part: Part<Item>, form: DrawnForm | undefined): Definition {
  // A part without a form is its own definition: most are, and drawing has to be fast.
  if (!form) return part as Omit<Part<Item>, 'form'>;
  return isList(form)
    ? { ...part, form, possible: (value) => isEntryOf(form, value) }
    : { ...part, form };
}

/** A wrong road drawn from the learner's own earlier values, or from the true ones. */
function roadPicture<Item>(
  { parts, wrong, drawnTrue }: Kind<Item>,
  item: Item,
  about: {
    readonly part: Part<Item>;
    readonly slip: Slip<Item>;
    /** From the true values. */
    readonly road: Road;
    readonly own: Earlier | undefined;
  },
): Picture | undefined {
  const { part, slip, road, own } = about;
  if (!own) return wrong?.(item, road);
  const isWild = own.some(
    (one, i) => !parts[i]?.form && Math.abs(one) > FARTHEST * Math.abs(road.earlier[i] ?? NaN),
  );
  if (isWild) return undefined;
  const [value, answer] = [slip.value(item, own), part.value(item, own)];
  if (!drawnTrue?.includes(part.id)) return wrong?.(item, { ...road, value, answer, earlier: own });
  // Turned round on the way, it would show the learner the opposite of what they entered.
  return value * road.value > 0 && answer * road.answer > 0 ? wrong?.(item, road) : undefined;
}

/** One character for a part: the sign of its answer, or a dot where the quantity has none. */
const signOf = ({ answer, definition: { quantity } }: DrawnPart): string =>
  quantity.positive === undefined ? '·' : answer < 0 ? '−' : '+';
