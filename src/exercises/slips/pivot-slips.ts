import { step, type Slip } from '../kind.ts';
import { rise, type PivotHeights } from '../paper/pivots.ts';
import { phrase, si } from '../phrase.ts';
import { angleSlips } from './angle-slips.ts';
import { tangentSlips } from './tangent-slips.ts';

/** The wrong roads from the step between the pivots, which the part before asks for, to the angle of the axis. */
export const angleOfStepSlips = <Item extends PivotHeights>(words: {
  readonly angle: string;
  readonly across: string;
  readonly wrongWay: string;
}): readonly Slip<Item>[] => [
  ...angleSlips<Item>({
    ...words,
    up: 'the step up',
    tangent: (item, earlier) => step(earlier, 0) / rise(item),
  }),
  {
    id: 'height-above-the-road',
    confuses: 'height above the road',
    value: ({ upperUp_mm }, earlier) => Math.atan(step(earlier, 0) / si(upperUp_mm, 'mm')),
    text: () =>
      phrase`That divides by the upper pivot’s height above the road. It would be right if the lower pivot stood on the road. The axis begins at the lower pivot, so take the step up from there.`,
  },
];

/** The wrong roads from the angle of the axis, which the part before asks for, down to the road below the lower pivot. */
export const belowPivotSlips = <Item extends PivotHeights>({
  angle,
  way,
}: {
  readonly angle: string;
  /** Which way the step goes: `across`, `along`. */
  readonly way: string;
}): readonly Slip<Item>[] => [
  ...tangentSlips<Item>({
    angle,
    up: 'height of the lower pivot',
    length: ({ lowerUp_mm }) => si(lowerUp_mm, 'mm'),
    size: (_item, earlier) => step(earlier, 0),
  }),
  {
    id: 'from-the-upper-pivot',
    confuses: 'height of the upper pivot',
    value: ({ upperUp_mm }, earlier) => si(upperUp_mm, 'mm') * Math.tan(step(earlier, 0)),
    text: () =>
      phrase`That uses the height of the upper pivot, and so is the way ${way} from the upper pivot to the road. Below the lower pivot only its own height is left.`,
  },
];
