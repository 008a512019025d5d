import { wellApart } from './apart.ts';
import { drawnForm, LIST_TOLERANCE, type DrawnSet, type Form } from './forms/form.ts';
import { settingTolerance } from './forms/setting.ts';
import type { Given } from './givens.ts';
import type { Earlier, Part } from './kind.ts';
import { ROUNDING_MARGIN, roundingOf, toleranceOf } from './tolerance.ts';

/** The numbers of a part, before anything is written about it. */
export interface Reckoned<Item> {
  readonly part: Part<Item>;
  /** The answers before this one. */
  readonly earlier: Earlier;
  readonly answer: number;
  readonly tolerance: number;
  readonly slipValues: readonly number[];
}

/** The numbers of all parts; undefined where two of them lie too near to each other. */
export function reckon<Item>(
  parts: readonly Part<Item>[],
  item: Item,
  givens: readonly Given[],
): readonly Reckoned<Item>[] | undefined {
  const reckoned: Reckoned<Item>[] = [];
  const answers: number[] = [];
  // For each part that is rounded before a later one, the answers of somebody who writes it down so.
  const roads: number[][] = [];
  for (const part of parts) {
    const earlier = [...answers];
    const answer = part.value(item, earlier);
    if (part.form && part.form.kind !== 'set') {
      const slipValues = onlyOnce(part.slips.map((slip) => slip.value(item, earlier)));
      for (const road of roads) road.push(part.value(item, road));
      reckoned.push({ part, earlier, answer, tolerance: LIST_TOLERANCE, slipValues });
      answers.push(answer);
      continue;
    }
    // Before the roads: slips start from the answer, which kinds may have kept (see forms/kept.ts).
    const slipValues = part.slips.map((slip) => slip.value(item, earlier));
    const ownRounding = Math.max(roundingOf(part, answer), readingOf(part, item));
    let rounding = ownRounding;
    for (const road of roads) {
      const value = part.value(item, road);
      rounding += Math.abs(value - answer);
      road.push(value);
    }
    const tolerance = part.form
      ? settingTolerance(drawnSet(part.form, item, earlier), answer)
      : toleranceOf(part, earlier.length, answer, rounding);
    if (!wellApart({ answer, tolerance, unit: part.unit }, slipValues, givens)) return undefined;
    reckoned.push({ part, earlier, answer, tolerance, slipValues });
    if (ownRounding > 0 && reckoned.length < parts.length)
      roads.push([...answers, answer + ownRounding]);
    answers.push(answer);
  }
  return reckoned;
}

const drawnSet = <Item>(
  form: Extract<Form<Item>, { kind: 'set' }>,
  item: Item,
  earlier: Earlier,
): DrawnSet => drawnForm(form, item, earlier) as DrawnSet;

/** Wrong roads to the same letter or order: the first of them speaks, the others are not there. */
const onlyOnce = (values: readonly number[]): readonly number[] =>
  values.map((value, i) => (values.indexOf(value) < i ? NaN : value));

/** What reading a chart may do to a value, before the margin that every rounding gets. */
const readingOf = <Item>({ readTo }: Part<Item>, item: Item): number =>
  readTo ? readTo(item) / ROUNDING_MARGIN : 0;
