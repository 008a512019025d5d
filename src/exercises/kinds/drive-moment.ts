import type { Corner, Side } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { leverOf, momentWithLever } from '../paper/along.ts';
import { cornerAtCentre, cornerAtRoad } from '../paper/corner.ts';
import { computed, deg, directed, given, mm, phrase, rounded, si, sign } from '../phrase.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';
import { leaningLeverSlips } from '../slips/leaning-lever-slips.ts';
import { momentSlips } from '../slips/moment-slips.ts';

interface Item {
  readonly side: Side;
  readonly force_N: number;
  readonly spindle_mm: number;
  readonly scrub_mm: number;
  readonly inclination_deg: number;
}

const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const spindle = ({ spindle_mm }: Item): number => si(spindle_mm, 'mm');
const moment = ({ side, force_N }: Item, earlier: Earlier): number =>
  momentWithLever(step(earlier, 0), side, { by: 'shaft', force: force_N });

/** The corner that has both offsets with this inclination. */
const atBothHeights = (item: Item): Corner =>
  cornerAtRoad({
    scrubRadius: scrub(item),
    inclination: inclination(item),
    loadedRadius: (spindle(item) - scrub(item)) / Math.tan(inclination(item)),
  });

const drive = ({ force_N }: Item): SeenForce => ({
  at: 'centre',
  force: force_N,
  says: given(force_N, 'N').figure,
});

/** A driving force through a shaft in line: lever about a leaning axis, and moment. */
export const driveMoment: Kind<Item> = {
  id: 'drive-moment',
  version: 1,
  title: 'Pulling away',
  lesson: 'what-the-carrier-feels',
  level: 1,
  draw: (random) => ({
    side: random.pick(['left', 'right']),
    force_N: 50 * random.integer(16, 60),
    spindle_mm: random.integer(60, 100),
    scrub_mm: random.pick([-1, 1]) * random.integer(4, 24),
    inclination_deg: 0.5 * random.integer(24, 32),
  }),
  sound: () => true,
  question: ({ side, force_N, spindle_mm, scrub_mm, inclination_deg }) =>
    phrase`The ${side} front wheel of a front-drive car is driven through a shaft in line with it: at the tyre ${given(force_N, 'N')}, forward. The wheel is upright, and the steering axis leans ${deg(inclination_deg)} inboard without caster. Its spindle offset is ${directed(spindle_mm, 'mm', QUANTITIES.spindleOffset)}, its scrub radius ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}.`,
  ...forcePictures<Item>({
    side: ({ side }) => side,
    left: (item) => atBothHeights(item),
    given: (item) => ({
      forces: [{ at: 'road', towards: [1, 0, 0], says: given(item.force_N, 'N').figure }],
      measures: [
        { of: 'spindleOffset', says: mm(Math.abs(item.spindle_mm)).figure },
        { of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure },
        { of: 'inclination', says: deg(item.inclination_deg).figure },
      ],
    }),
    forces: (item) => [drive(item)],
    parts: {
      lever: { seen: 'lever', force: drive, taken: { 'lean-forgotten': 'spindleOffset' } },
      moment: { seen: 'moment', force: drive },
    },
  }),
  parts: [
    {
      id: 'lever',
      quantity: OWN_QUANTITIES.lever,
      unit: 'mm',
      decimals: 1,
      label: 'Lever of the driving force about the steering axis',
      value: (item) =>
        leverOf(
          cornerAtCentre({ spindleOffset: spindle(item), inclination: inclination(item) }),
          'shaft',
        ),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`Who holds the torque: the carrier, or the shaft? That says at which height the force counts. Of the offset there, a leaning axis takes the cosine of its lean.`,
      slips: [
        {
          id: 'lean-forgotten',
          confuses: 'spindle offset',
          value: spindle,
          text: () =>
            phrase`That is the spindle offset itself. About an upright axis it would be the lever. This one leans, and takes only the cosine of its inclination from it.`,
        },
        {
          id: 'scrub-radius',
          confuses: 'scrub radius',
          value: (item) => Math.abs(scrub(item)) * Math.cos(inclination(item)),
          text: () =>
            phrase`That takes the scrub radius. It would be right for a brake on the carrier, which hands the torque over. Here the shaft keeps the torque, so the force counts at the wheel centre.`,
        },
        ...leaningLeverSlips<Item>({ offset: 'spindle offset', length: spindle, inclination }),
      ],
      solution: ({ spindle_mm, inclination_deg }, _earlier, value) =>
        phrase`The shaft holds the torque, so the force counts at the wheel centre, with the spindle offset. The leaning axis takes ${mm(spindle_mm)} · cos ${deg(inclination_deg)} = ${computed(value, 'length')} of it.`,
    },
    {
      id: 'moment',
      quantity: QUANTITIES.driveMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the driving force about the steering axis',
      value: moment,
      hint: () =>
        phrase`Force times lever, in newtons and metres. Then look from above: the force pushes forward, outboard of the axis.`,
      slips: [
        ...momentSlips(moment),
        {
          id: 'scrub-radius',
          confuses: 'scrub radius',
          value: (item) =>
            momentWithLever(scrub(item) * Math.cos(inclination(item)), item.side, {
              by: 'shaft',
              force: item.force_N,
            }),
          text: () =>
            phrase`That works with the scrub radius as its lever, as for a brake on the carrier. A driving force passes the bearing at the wheel centre, since the torque stays in the shaft.`,
        },
      ],
      solution: ({ side, force_N }, earlier, value) =>
        phrase`${given(force_N, 'N')} · ${rounded(step(earlier, 0), 'm', 5)} = ${rounded(Math.abs(value), 'Nm', 1)}. Forward and outboard of the axis turns the ${side} wheel ${sign(value, QUANTITIES.driveMoment)}, which is toe-in.`,
    },
  ],
};
