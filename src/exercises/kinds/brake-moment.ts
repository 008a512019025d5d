import type { Corner, Side } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { keptStep } from '../forms/kept.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { momentAlong } from '../paper/along.ts';
import { cornerAtCentre, cornerAtRoad } from '../paper/corner.ts';
import { between } from '../paper/plausible.ts';
import { computed, deg, given, mm, phrase, rounded, si, sign } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';
import { axisFromCentre } from '../pictures/given-measures.ts';
import { momentSlips } from '../slips/moment-slips.ts';

interface Item {
  readonly side: Side;
  readonly force_N: number;
  readonly spindle_mm: number;
  readonly radius_mm: number;
  readonly inclination_deg: number;
}

const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const spindle = ({ spindle_mm }: Item): number => si(spindle_mm, 'mm');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const lean = (item: Item): number => radius(item) * Math.tan(inclination(item));
const moment = keptStep((item: Item, earlier: Earlier): number =>
  momentAlong(
    cornerAtRoad({ scrubRadius: step(earlier, 0), inclination: inclination(item) }),
    item.side,
    { by: 'brake', force: item.force_N },
  ),
);
const cosine = (item: Item): number => Math.cos(inclination(item));
/** A rearward force that far outboard of the axis. */
const rearward = ({ side }: Item): number => (side === 'left' ? 1 : -1);

const leaning = (item: Item, spindleOffset = spindle(item)): Corner =>
  cornerAtCentre({
    spindleOffset,
    inclination: inclination(item),
    loadedRadius: radius(item),
  });

const brake = ({ force_N }: Item): SeenForce => ({
  at: 'road',
  force: -force_N,
  says: given(force_N, 'N').figure,
});

/** A brake on the carrier: down to the road for the lever, then the moment with its side. */
export const brakeMoment: Kind<Item> = {
  id: 'brake-moment',
  version: 1,
  title: 'A brake on the carrier',
  lesson: 'braking-at-the-ground',
  level: 2,
  draw: (random) => ({
    side: random.pick(['left', 'right']),
    force_N: 50 * random.integer(24, 90),
    spindle_mm: random.integer(48, 100),
    radius_mm: random.integer(285, 345),
    inclination_deg: 0.5 * random.integer(22, 30),
  }),
  sound: (item) => {
    const scrub_mm = 1000 * (spindle(item) - lean(item));
    return between(Math.abs(scrub_mm), 6, 32);
  },
  question: ({ side, force_N, spindle_mm, radius_mm, inclination_deg }) =>
    phrase`The caliper of the ${side} front wheel sits on the carrier. Braking, the road holds the tyre back with ${given(force_N, 'N')}. The wheel is upright, its loaded radius ${mm(radius_mm)}. The steering axis leans ${deg(inclination_deg)} inboard without caster and passes ${mm(spindle_mm)} inboard of the wheel centre.`,
  ...forcePictures<Item>({
    side: ({ side }) => side,
    left: (item) => leaning(item),
    given: (item) => ({
      axis: 'high',
      forces: [{ at: 'road', towards: [-1, 0, 0], says: given(item.force_N, 'N').figure }],
      measures: axisFromCentre(item),
    }),
    forces: (item) => [brake(item)],
    parts: {
      moment: {
        seen: 'moment',
        force: brake,
        on: (item, earlier) => leaning(item, step(earlier, 0) + lean(item)),
        taken: { 'brake-torque': 'loadedRadius' },
      },
    },
    other: (item, road) =>
      seenBeside({ of: 'scrubRadius', says: 'scrub radius', view: 'front' }, road, (value) =>
        leaning(item, value + lean(item)),
      ),
  }),
  parts: [
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Scrub radius',
      value: (item) =>
        measure(
          cornerAtCentre({
            spindleOffset: spindle(item),
            inclination: inclination(item),
            loadedRadius: radius(item),
          }),
        ).scrubRadius,
      sum: 'rounded',
      hint: () =>
        phrase`The brake’s force counts at the road. From the wheel centre down to the road the axis goes outboard: by how much, over the loaded radius?`,
      slips: [
        {
          id: 'added',
          confuses: 'way up',
          value: (item) => spindle(item) + lean(item),
          text: () =>
            phrase`That adds the lean of the axis, which is the way up from the road to the wheel centre. Here it goes down, and going down the axis comes outboard: take it away.`,
        },
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => spindle(item) - 2 * lean(item),
          text: () =>
            phrase`That goes down by a whole diameter of the wheel. From its centre to the road there is one loaded radius.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item) => lean(item) - spindle(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. The word says where the axis meets the road, seen from the contact centre.`,
        },
        {
          id: 'lean-alone',
          confuses: 'lean of the axis',
          value: lean,
          text: () =>
            phrase`That is the lean of the axis between wheel centre and road alone. It is how far the axis comes outboard on its way down; the scrub radius is what that leaves of the spindle offset.`,
        },
      ],
      solution: ({ spindle_mm, radius_mm, inclination_deg }, _earlier, value) =>
        phrase`Down from the wheel centre: ${mm(spindle_mm)} − ${mm(radius_mm)} · tan ${deg(inclination_deg)} = ${computed(value, 'length')}. The axis meets the road ${sign(value, QUANTITIES.scrubRadius)} of the contact centre.`,
    },
    {
      id: 'moment',
      quantity: QUANTITIES.brakeMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the braking force about the steering axis',
      value: moment,
      hint: () =>
        phrase`Force times scrub radius times the cosine of the lean, in newtons and metres. Then look from above: rearward, and on which side of the axis?`,
      slips: [
        ...momentSlips(moment),
        {
          id: 'spindle-offset',
          confuses: 'spindle offset',
          value: (item) => rearward(item) * item.force_N * spindle(item) * cosine(item),
          text: () =>
            phrase`That takes the spindle offset for the lever. It would be right for a brake inboard in the car, or for recuperation. A caliper on the carrier brings the force down to the road.`,
        },
        {
          id: 'brake-torque',
          confuses: 'brake torque',
          value: (item) => rearward(item) * item.force_N * radius(item),
          text: () =>
            phrase`That is the brake torque, about the spin axis: what the pads give the disc. About the steering axis the force has the scrub radius for a lever, and the torque is in that already.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${given(item.force_N, 'N')} · ${rounded(Math.abs(step(earlier, 0)), 'm', 5)} · cos ${deg(item.inclination_deg)} = ${rounded(Math.abs(value), 'Nm', 1)}. The force pushes rearward, ${step(earlier, 0) > 0 ? 'outboard' : 'inboard'} of the axis, so it turns the ${item.side} wheel ${sign(value, QUANTITIES.brakeMoment)}.`,
    },
  ],
};
