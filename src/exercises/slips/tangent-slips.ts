import { fromSI } from '#core/units/convert.ts';
import type { Earlier, Slip } from '../kind.ts';
import { phrase } from '../phrase.ts';

interface Side<Item> {
  /** Name of the angle in a sentence: `inclination`. */
  readonly angle: string;
  /** Name of the upright side in a sentence: `height of the lower pivot`. */
  readonly up: string;
  readonly length: (item: Item) => number;
  readonly size: (item: Item, earlier: Earlier) => number;
}

/** The wrong roads from an upright length and the axis's angle to the level side of the triangle: length × tan. */
export const tangentSlips = <Item>({
  angle,
  up,
  length,
  size,
}: Side<Item>): readonly Slip<Item>[] => [
  {
    id: 'calculator-on-radians',
    confuses: 'radians',
    value: (item, earlier) => length(item) * Math.tan(fromSI(size(item, earlier), 'deg')),
    text: () =>
      phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; the ${angle} here is in degrees. Set it to DEG and take the tangent again.`,
  },
  {
    id: 'divided',
    confuses: 'dividing by the tangent',
    value: (item, earlier) => length(item) / Math.tan(size(item, earlier)),
    text: () =>
      phrase`That comes from dividing by the tangent. It would be right if the level side of the triangle were known and the ${up} asked for. Here it is the other way round: multiply.`,
  },
  {
    id: 'cosine',
    confuses: 'cosine',
    value: (item, earlier) => length(item) * Math.cos(size(item, earlier)),
    text: () =>
      phrase`That uses the cosine, which shortens a slanted length to its upright share. The ${up} is upright already, and the level side of the triangle is asked for: that is the tangent’s work.`,
  },
  {
    id: 'per-cent',
    confuses: 'per cent',
    value: (item, earlier) => (length(item) * fromSI(size(item, earlier), 'deg')) / 100,
    text: () =>
      phrase`That takes the degrees for per cent. A slope in per cent may be multiplied like that; the ${angle} is an angle, so its tangent has to be taken first.`,
  },
];
