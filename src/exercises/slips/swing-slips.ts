import { swingFactor } from '#core/swing-by-rule.ts';
import { fromSI } from '#core/units/convert.ts';
import { step, type Slip } from '../kind.ts';
import { phrase } from '../phrase.ts';

interface Swing<Item> {
  /** What comes out of the swing, in a sentence: `caster`. */
  readonly found: string;
  /** How far the wheel is turned each way, in radians. */
  readonly turn: (item: Item) => number;
}

/** The wrong roads from the difference of two readings, the part before, to the angle: difference / (2 sin δ). */
export const swingSlips = <Item>({ found, turn }: Swing<Item>): readonly Slip<Item>[] => [
  {
    id: 'one-way-only',
    confuses: 'one turn for both',
    value: (item, earlier) => step(earlier, 0) / Math.sin(turn(item)),
    text: () =>
      phrase`That divides by the sine once, and so takes one turn for both. It would be right for the change from straight ahead to one side. The wheel was swung from one side to the other: twice the sine.`,
  },
  {
    id: 'multiplied',
    confuses: 'multiplying',
    value: (item, earlier) => step(earlier, 0) / swingFactor(turn(item)),
    text: () =>
      phrase`That comes from multiplying. It would be right if the ${found} were known and the difference asked for. A swing of such a size shows only a part of the ${found}, so divide: the result is larger than the difference.`,
  },
  {
    id: 'whole-swing',
    confuses: 'whole swing',
    value: (item, earlier) => step(earlier, 0) / (2 * Math.sin(2 * turn(item))),
    text: () =>
      phrase`That takes the sine of the whole swing, from one lock to the other. The two before the sine already stands for both locks; the angle in it is the turn from straight ahead to one of them.`,
  },
  {
    id: 'radians',
    confuses: 'radians',
    value: (item, earlier) => step(earlier, 0) / (2 * Math.sin(fromSI(turn(item), 'deg'))),
    text: () =>
      phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; turn plates are marked in degrees. Set it to DEG and take the sine again.`,
  },
];
