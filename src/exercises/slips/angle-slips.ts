import { toSI } from '#core/units/convert.ts';
import type { Earlier, Slip } from '../kind.ts';
import { phrase } from '../phrase.ts';

interface Triangle<Item> {
  /** Name of the angle in a sentence: `caster angle`. */
  readonly angle: string;
  /** The two sides in a sentence: the one across from the angle, and the upright one beside it. */
  readonly across: string;
  readonly up: string;
  /** Where the top of the axis leans if the sign is lost: `outboard`. */
  readonly wrongWay: string;
  /** Tangent of the angle. */
  readonly tangent: (item: Item, earlier: Earlier) => number;
}

/** The wrong roads from two sides of a triangle to the angle between axis and upright. */
export const angleSlips = <Item>({
  angle,
  across,
  up,
  wrongWay,
  tangent,
}: Triangle<Item>): readonly Slip<Item>[] => [
  {
    id: 'angle-to-the-road',
    confuses: 'angle between axis and road',
    value: (item, earlier) => Math.atan(1 / tangent(item, earlier)),
    text: () =>
      phrase`That is the angle between axis and road: the fraction stands on its head. A protractor held to the road would show it. The ${angle} is counted from upright, so ${across} goes on top and ${up} below.`,
  },
  {
    id: 'sign-lost',
    confuses: `direction of the ${angle}`,
    value: (item, earlier) => -Math.atan(tangent(item, earlier)),
    text: () =>
      phrase`The size fits, but the direction of the ${angle} is turned round: this lets the top of the axis lean ${wrongWay}. It would be so if the axis climbed the other way. Look again which way it goes from bottom to top.`,
  },
  {
    id: 'radians',
    confuses: 'radians',
    value: (item, earlier) => toSI(Math.atan(tangent(item, earlier)), 'deg'),
    text: () =>
      phrase`That is the ${angle} in radians: the calculator stands on RAD. Some formulas of mechanics want radians; an alignment sheet has degrees. Set it to DEG and take tan⁻¹ again.`,
  },
  {
    id: 'per-cent',
    confuses: 'slope in per cent',
    value: (item, earlier) => toSI(100 * tangent(item, earlier), 'deg'),
    text: () =>
      phrase`That is the slope in per cent, as it is given for roads and ramps: ${across} for every hundred of ${up}. The ${angle} is the angle whose tangent that slope is: tan⁻¹ is still to come.`,
  },
];
