import { fromSI } from '#core/units/convert.ts';
import type { Slip } from '../kind.ts';
import { phrase } from '../phrase.ts';

interface Lever<Item> {
  /** Name of the offset in a sentence: `spindle offset`. */
  readonly offset: string;
  readonly length: (item: Item) => number;
  readonly inclination: (item: Item) => number;
}

/** The wrong roads from an offset across the car to the lever about an axis that leans: length × cos. */
export const leaningLeverSlips = <Item>({
  offset,
  length,
  inclination,
}: Lever<Item>): readonly Slip<Item>[] => [
  {
    id: 'sine',
    confuses: 'sine',
    value: (item) => length(item) * Math.sin(inclination(item)),
    text: () =>
      phrase`That takes the sine. It would be the share of a force that points along the axis. A hinge that leans a little still takes nearly all of the turning, and its share is the cosine.`,
  },
  {
    id: 'divided',
    confuses: 'dividing by the cosine',
    value: (item) => length(item) / Math.cos(inclination(item)),
    text: () =>
      phrase`That comes from dividing by the cosine, and is longer than the ${offset} itself. The lean takes something away from a lever and never adds to it: multiply.`,
  },
  {
    id: 'calculator-on-radians',
    confuses: 'radians',
    value: (item) => length(item) * Math.abs(Math.cos(fromSI(inclination(item), 'deg'))),
    text: () =>
      phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; the inclination here is in degrees. Set it to DEG and take the cosine again.`,
  },
];
