import { changed, NO_CHANGE } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept, keptStep } from '../forms/kept.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { steeringMomentOf } from '../paper/axle.ts';
import { cornerAtCentre } from '../paper/corner.ts';
import { between, roughLean_mm } from '../paper/plausible.ts';
import { computed, deg, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { brakeSense, senseOf, wrongTurn } from '../pictures/axle-pictures.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';
import { brakesAsGiven } from '../pictures/given-pictures.ts';
import type { AxlePicture } from '../pictures/picture.ts';

interface Item {
  readonly spindle_mm: number;
  readonly radius_mm: number;
  readonly inclination_deg: number;
  readonly spacer_mm: number;
  readonly left_N: number;
  readonly right_N: number;
}

const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const spindle = ({ spindle_mm }: Item): number => si(spindle_mm, 'mm');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const spacer = ({ spacer_mm }: Item): number => si(spacer_mm, 'mm');
const lean = (item: Item): number => radius(item) * Math.tan(inclination(item));
const scrubBefore = kept(
  (item: Item): number =>
    measure(
      cornerAtCentre({
        spindleOffset: spindle(item),
        inclination: inclination(item),
        loadedRadius: radius(item),
      }),
    ).scrubRadius,
);
const momentAt = (item: Item, scrub: number): number =>
  steeringMomentOf({ left: item.left_N, right: item.right_N }, scrub * Math.cos(inclination(item)));
/** The scrub radius that is left once the spacer has used up what it takes to come to nought. */
const scrubBeyond = (item: Item, earlier: Earlier): number => spacer(item) - step(earlier, 1);
const flipped = keptStep((item: Item, earlier: Earlier): number =>
  momentAt(item, scrubBeyond(item, earlier)),
);

/** The corner on a spacer of so many metres. */
const spaced = (item: Item, thickness: number, spindleOffset = spindle(item)): Corner =>
  changed(
    cornerAtCentre({
      spindleOffset,
      inclination: inclination(item),
      loadedRadius: radius(item),
    }),
    { ...NO_CHANGE, spacer: thickness },
  );

const after_mm = (item: Item): number => 1000 * scrubBefore(item) + item.spacer_mm;
const braked = (item: Item): AxlePicture =>
  brakesAsGiven(item.left_N, item.right_N, after_mm(item));

/** A spacer that carries the tyre over its axis, and what then is left to turn the wheels. */
export const spacerThatFlips: Kind<Item> = {
  id: 'spacer-that-flips',
  version: 1,
  title: 'A spacer over the line',
  lesson: 'left-against-right',
  level: 3,
  draw: (random) => {
    const radius_mm = random.integer(285, 340);
    const inclination_deg = random.grid(12, 16, 0.5);
    const flip_mm = random.integer(6, 24);
    return {
      spindle_mm: Math.round(roughLean_mm(radius_mm, inclination_deg)) - flip_mm,
      radius_mm,
      inclination_deg,
      spacer_mm: flip_mm + random.integer(5, 18),
      left_N: random.grid(500, 4500, 100),
      right_N: random.grid(500, 4500, 100),
    };
  },
  sound: ({ spindle_mm, left_N, right_N }) =>
    between(spindle_mm, 38, 80) && Math.abs(left_N - right_N) >= 800,
  question: (item) =>
    phrase`Somebody plans spacers of ${mm(item.spacer_mm)} for a front-drive car. Its wheels stand upright on a loaded radius of ${mm(item.radius_mm)}. The spindle offset is ${mm(item.spindle_mm)} inboard, and the axis leans ${deg(item.inclination_deg)} inboard without caster. On a road that is wet on one side only, the left front tyre brakes with ${given(item.left_N, 'N')}, the right one with ${given(item.right_N, 'N')}; the brakes sit on the carriers.`,
  picture: (item) => ({
    scene: 'corner',
    view: 'front',
    corner: spaced(item, 0),
    axis: 'high',
    measures: [
      { of: 'spindleOffset', says: mm(item.spindle_mm).figure },
      { of: 'inclination', says: deg(item.inclination_deg).figure },
      { of: 'loadedRadius', says: mm(item.radius_mm).figure },
    ],
  }),
  solved: (item) => ({
    ...braked(item),
    turns: {
      left: brakeSense('left', after_mm(item)),
      right: brakeSense('right', after_mm(item)),
      both: senseOf(momentAt(item, after_mm(item) / 1000)),
    },
  }),
  wrong: (item, road) => {
    switch (road.part) {
      case 'scrub':
        return seenBeside(
          { of: 'scrubRadius', says: 'scrub radius', view: 'front' },
          road,
          (value) =>
            cornerAtCentre({
              spindleOffset: value + lean(item),
              inclination: inclination(item),
              loadedRadius: radius(item),
            }),
        );
      case 'flip':
        return seenBeside({ of: 'scrubRadius', says: 'nought', view: 'front' }, road, (value) =>
          spaced(item, value, step(road.earlier, 0) + lean(item)),
        );
      default:
        return wrongTurn(braked(item), 'both', road, {
          left: brakeSense('left', after_mm(item)),
          right: brakeSense('right', after_mm(item)),
        });
    }
  },
  drawnTrue: ['moment'],
  parts: [
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Scrub radius without spacers',
      value: scrubBefore,
      sum: 'rounded',
      hint: () =>
        phrase`From the wheel centre down to the road the axis runs outboard. How far, over one loaded radius, and does it get past the middle of the tyre?`,
      slips: [
        {
          id: 'lean-added',
          confuses: 'lean of the axis',
          value: (item) => spindle(item) + lean(item),
          text: () =>
            phrase`That adds the lean of the axis. On the way up it would be right; here it goes down to the road, and an axis that leans inboard at the top comes closer to the tyre’s middle below. Take it away.`,
        },
        {
          id: 'lean-alone',
          confuses: 'spindle offset',
          value: (item) => -lean(item),
          text: () =>
            phrase`That is the lean alone. The axis starts beside the wheel centre, inboard of it by the spindle offset, and only then leans outboard on its way down.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item) => -scrubBefore(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. The lean is larger than the spindle offset, so at the road the axis has passed under the middle of the tyre and beyond.`,
        },
        {
          id: 'sine',
          confuses: 'sine',
          value: (item) => spindle(item) - radius(item) * Math.sin(inclination(item)),
          text: () =>
            phrase`That takes the sine. It would be right with the length along the axis; the loaded radius stands upright, and from upright to level it is the tangent.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`${mm(item.spindle_mm)} − ${mm(item.radius_mm)} · tan ${deg(item.inclination_deg)} = ${computed(value, 'length')}: the axis meets the road ${sign(value, QUANTITIES.scrubRadius)} of the contact centre.`,
    },
    {
      id: 'flip',
      quantity: OWN_QUANTITIES.spacerToNought,
      unit: 'mm',
      decimals: 1,
      label: 'Spacer with which the scrub radius comes to nought',
      value: (_item, earlier) => -step(earlier, 0),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`A spacer carries the wheel outboard by its thickness, and the axis stays. How far has the contact centre to go until it stands on the axis?`,
      slips: [
        {
          id: 'doubled',
          confuses: 'as far beyond',
          value: (_item, earlier) => -2 * step(earlier, 0),
          text: () =>
            phrase`That carries the tyre over the axis and as far beyond: the scrub radius would be as large as before, on the other side. Nought lies half way there.`,
        },
        {
          id: 'halved',
          confuses: 'shared between the two wheels',
          value: (_item, earlier) => -step(earlier, 0) / 2,
          text: () =>
            phrase`That has the way shared between the two wheels. Each wheel has an axis of its own, and each has to go the whole way: a spacer of that thickness on either side.`,
        },
        {
          id: 'spindle-offset',
          confuses: 'spindle offset',
          value: spindle,
          text: () =>
            phrase`That is the spindle offset, the distance at the height of the wheel centre, and a spacer makes it longer. What has to come to nought is the distance at the road.`,
        },
        {
          id: 'lean',
          confuses: 'lean of the axis',
          value: lean,
          text: () =>
            phrase`That is the lean of the axis between wheel centre and road. A part of it only makes up for the spindle offset; what is left of it beyond that is the way to go.`,
        },
      ],
      solution: (_item, _earlier, value) =>
        phrase`The wheel has to go as far outboard as the axis lies outboard of the contact centre: ${computed(value, 'length')}. With anything thicker, the axis lies inboard.`,
    },
    {
      id: 'moment',
      quantity: QUANTITIES.steeringMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Steering moment of both wheels with the planned spacers',
      value: flipped,
      hint: () =>
        phrase`How far does the planned spacer go beyond nought? That is the new scrub radius. A leaning axis takes the cosine of its lean; then it is the difference of the forces that counts.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'direction of the steering moment',
          value: (item, earlier) => -flipped(item, earlier),
          text: () =>
            phrase`The size fits, but the direction of the steering moment is turned round. It was so before the spacer went over the line. Now the axis lies inboard of the contact centre: pull the stronger tyre rearward there.`,
        },
        {
          id: 'added-up',
          confuses: 'sum of the braking forces',
          value: (item, earlier) =>
            steeringMomentOf(
              {
                left: Math.sign(item.left_N - item.right_N) * (item.left_N + item.right_N),
                right: 0,
              },
              scrubBeyond(item, earlier) * Math.cos(inclination(item)),
            ),
          text: () =>
            phrase`That takes the sum of the braking forces. On the rack the two wheels pull against each other, and only their difference is left to turn them.`,
        },
        {
          id: 'whole-spacer',
          confuses: 'whole spacer',
          value: (item) => momentAt(item, spacer(item)),
          text: () =>
            phrase`That takes the whole spacer for the scrub radius, as if the axis had met the road under the middle of the tyre. A part of it is used up before the sign changes; only the rest is lever.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item, earlier) => 1000 * flipped(item, earlier),
          text: () =>
            phrase`That multiplies newtons by millimetres. Some drawings do give moments in N·mm; in N·m the lever has to be in metres.`,
        },
      ],
      solution: (item, earlier, value) => {
        const left = item.left_N - item.right_N;
        const scrub = scrubBeyond(item, earlier);
        return phrase`New scrub radius: ${mm(item.spacer_mm)} − ${rounded(step(earlier, 1), 'mm', 1)} = ${rounded(scrub, 'mm', 1)}, inboard. Difference of the forces: ${given(item.left_N, 'N')} − ${given(item.right_N, 'N')} = ${rounded(left, 'N', 0)}. Moment: ${term(rounded(left, 'N', 0))} · ${rounded(scrub, 'm', 5)} · cos ${deg(item.inclination_deg)} = ${rounded(value, 'Nm', 1)}, ${sign(value, QUANTITIES.steeringMoment)}. Without spacers it was the other way.`;
      },
    },
  ],
};
