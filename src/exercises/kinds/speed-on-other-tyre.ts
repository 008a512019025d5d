import { rimDiameter, sectionHeight } from '#core/tyre/dimensions.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind, type Part, type Slip } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { diameterOf, tyreOf, written, type Size } from '../paper/tyre.ts';
import { bare, given, phrase, rounded, si } from '../phrase.ts';
import type { TyrePicture } from '../pictures/part-pictures.ts';

interface Item {
  readonly oldWidth: number;
  readonly oldAspect: number;
  readonly oldRim: number;
  readonly newWidth: number;
  readonly newAspect: number;
  readonly newRim: number;
  readonly 'shown_km/h': number;
}

const oldSize = kept(({ oldWidth, oldAspect, oldRim }: Item): Size => ({
  width: oldWidth,
  aspect: oldAspect,
  rim: oldRim,
}));
const newSize = kept(({ newWidth, newAspect, newRim }: Item): Size => ({
  width: newWidth,
  aspect: newAspect,
  rim: newRim,
}));
const height = (size: Size): number => sectionHeight(tyreOf(size));
const rim = (size: Size): number => rimDiameter(tyreOf(size));
const shown = (item: Item): number => si(item['shown_km/h'], 'km/h');
const growth = kept(
  (item: Item): number => diameterOf(newSize(item)) / diameterOf(oldSize(item)) - 1,
);

const onRoad = (size: Size): TyrePicture => ({
  scene: 'tyre',
  tyre: { diameter_mm: 1000 * diameterOf(size), rim_mm: 1000 * rim(size) },
  measures: [],
});

/** From two sizes on the sidewall to what the speedometer keeps from the driver. */
export const speedOnOtherTyre: Kind<Item> = {
  id: 'speed-on-other-tyre',
  version: 1,
  title: 'What the speedometer does not know',
  lesson: 'tyres-and-camber',
  level: 2,
  draw: (random) => {
    const oldRim = random.integer(14, 17);
    const oldWidth = 5 + random.grid(160, 220, 10);
    const oldAspect = random.grid(50, 70, 5);
    return {
      oldWidth,
      oldAspect,
      oldRim,
      newWidth: oldWidth + random.pick([10, 20, 20, 30]),
      newAspect: oldAspect - random.pick([0, 5, 5, 10]),
      newRim: oldRim + random.pick([1, 1, 1, 1, 2]),
      'shown_km/h': random.grid(40, 130, 5),
    };
  },
  sound: (item) => Math.abs(growth(item)) >= 0.012 && Math.abs(growth(item)) <= 0.12,
  question: (item) =>
    phrase`A car comes on ${written(oldSize(item))} and its speedometer is right. It gets ${written(newSize(item))}. The driver keeps to ${given(item['shown_km/h'], 'km/h')} on the dial. How fast is the car?`,
  solved: (item) => ({
    ...onRoad(newSize(item)),
    before: onRoad(oldSize(item)).tyre,
    measures: [
      { of: 'diameter', says: rounded(diameterOf(newSize(item)), 'mm', 1).figure },
      { of: 'rim', says: rounded(rim(newSize(item)), 'mm', 1).figure },
      { of: 'height', says: rounded(height(newSize(item)), 'mm', 1).figure },
    ],
  }),
  wrong: (item, { part, value }) =>
    part === 'speed'
      ? undefined
      : {
          ...onRoad(part === 'old' ? oldSize(item) : newSize(item)),
          measures: [
            { of: 'rim', says: 'rim' },
            { of: 'height', says: 'sidewall' },
          ],
          wrong_mm: 1000 * value,
        },
  parts: [
    diameterPart('old', 'Outer diameter of the old tyre', oldSize),
    diameterPart('new', 'Outer diameter of the new tyre', newSize),
    {
      id: 'speed',
      quantity: OWN_QUANTITIES.trueSpeed,
      unit: 'km/h',
      decimals: 1,
      label: 'True speed',
      value: (item, earlier) => (shown(item) * step(earlier, 1)) / step(earlier, 0),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`The speedometer counts turns of the wheel. In one turn, which tyre takes the car farther, and in which ratio?`,
      slips: [
        {
          id: 'inverse',
          confuses: 'old and new',
          value: (item, earlier) => (shown(item) * step(earlier, 0)) / step(earlier, 1),
          text: () =>
            phrase`That has old and new changed round. It is what the dial would show if the car itself did that speed. A larger tyre goes farther in each turn, so the car is faster than the dial says.`,
        },
        {
          id: 'rims',
          confuses: 'rim diameters',
          value: (item) => (shown(item) * item.newRim) / item.oldRim,
          text: () =>
            phrase`That takes the ratio of the rim diameters. The rim does not touch the road: with the sidewalls on top it is the outer diameters that roll.`,
        },
        {
          id: 'difference-added',
          confuses: 'millimetres for kilometres an hour',
          value: (item, earlier) =>
            shown(item) + si(1000 * (step(earlier, 1) - step(earlier, 0)), 'km/h'),
          text: () =>
            phrase`That adds the difference of the diameters to the speed, and so takes millimetres for kilometres an hour. The two diameters make a ratio, and the ratio multiplies the speed.`,
        },
        {
          id: 'widths',
          confuses: 'section widths',
          value: (item) => (shown(item) * item.newWidth) / item.oldWidth,
          text: () =>
            phrase`That takes the ratio of the section widths. A wider tyre does not roll farther for it; width comes in only by way of the section height.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`In each turn the new tyre goes farther or less far in the ratio of the diameters: ${rounded(step(earlier, 1), 'mm', 1)} ÷ ${rounded(step(earlier, 0), 'mm', 1)} = ${bare(step(earlier, 1) / step(earlier, 0), 3)}, and times what the dial shows that is ${rounded(value, 'km/h', 1)}. ${growth(item) > 0 ? 'The dial shows too little, which most road rules forbid.' : 'The dial shows too much.'}`,
    },
  ],
};

function diameterPart(id: string, label: string, size: (item: Item) => Size): Part<Item> {
  const slips: readonly Slip<Item>[] = [
    {
      id: 'one-sidewall',
      confuses: 'one sidewall',
      value: (item) => rim(size(item)) + height(size(item)),
      text: () =>
        phrase`That has one sidewall in it. It would be right from the bottom of the tyre to the top of the rim. A diameter goes through the rim with a sidewall at either end.`,
    },
    {
      id: 'whole-width',
      confuses: 'whole width',
      value: (item) => rim(size(item)) + 2 * si(size(item).width, 'mm'),
      text: () =>
        phrase`That takes the whole width for the height of a sidewall. The second number is what the height is of the width, in per cent: it has to be taken first.`,
    },
    {
      id: 'radius',
      confuses: 'radius',
      value: (item) => diameterOf(size(item)) / 2,
      text: () =>
        phrase`That is the radius, from the middle of the wheel to the tread. Here the diameter is asked for, from tread to tread through the middle.`,
    },
    {
      id: 'inches',
      confuses: 'inches',
      value: (item) => si(size(item).rim, 'mm') + 2 * height(size(item)),
      text: () =>
        phrase`That adds the rim’s number as if it were millimetres. It is in inches, the only number of the three that is: turn it into millimetres first.`,
    },
  ];
  return {
    id,
    quantity: OWN_QUANTITIES.outerDiameter,
    unit: 'mm',
    decimals: 1,
    label,
    value: (item) => diameterOf(size(item)),
    sum: 'rounded',
    possible: (value) => value > 0,
    hint: () =>
      phrase`Rim and two sidewalls. The rim is in inches; a sidewall is a share of the width, in per cent.`,
    slips,
    solution: (item, _earlier, value) =>
      phrase`The rim is ${rounded(rim(size(item)), 'mm', 1)} across, a sidewall ${rounded(height(size(item)), 'mm', 2)} high: ${rounded(rim(size(item)), 'mm', 1)} + 2 · ${rounded(height(size(item)), 'mm', 2)} = ${rounded(value, 'mm', 1)}.`,
  };
}
