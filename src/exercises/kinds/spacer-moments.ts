import type { Corner, Side } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind, type Slip } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { momentWithLever } from '../paper/along.ts';
import { cornerAtRoad, cornerWithLevers } from '../paper/corner.ts';
import { directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';
import { momentSlips } from '../slips/moment-slips.ts';

interface Item {
  readonly side: Side;
  readonly scrub_mm: number;
  readonly spindle_mm: number;
  readonly spacer_mm: number;
  readonly brake_N: number;
  readonly blow_N: number;
}

const spacer = ({ spacer_mm }: Item): number => si(spacer_mm, 'mm');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const spindle = ({ spindle_mm }: Item): number => si(spindle_mm, 'mm');
/** A spacer goes into either lever. */
const atRoad = (item: Item): number => scrub(item) + spacer(item);
const atCentre = (item: Item): number => spindle(item) + spacer(item);

const braked = (item: Item, lever: number): number =>
  momentWithLever(lever, item.side, { by: 'brake', force: item.brake_N });
const struck = (item: Item, lever: number): number =>
  momentWithLever(lever, item.side, { by: 'edge', force: item.blow_N });

const brakeNow = kept((item: Item): number => braked(item, atRoad(item)));
const blowNow = kept((item: Item): number => struck(item, atCentre(item)));

/** The wrong levers of a moment: without the spacer, the spacer alone, and the one at the other height. */
const leverSlips = (
  moment: (item: Item, lever: number) => number,
  own: (item: Item) => number,
  other: (item: Item) => number,
  heights: Readonly<Record<'here' | 'there', string>>,
): readonly Slip<Item>[] => [
  {
    id: 'without-spacer',
    confuses: 'old lever',
    value: (item) => moment(item, own(item)),
    text: () =>
      phrase`That is the moment over the old lever, as the car was. The spacer has moved the wheel away from the axis: its thickness belongs to the lever at either height.`,
  },
  {
    id: 'spacer-alone',
    confuses: 'spacer alone',
    value: (item) => moment(item, spacer(item)),
    text: () =>
      phrase`That takes the spacer alone for the lever, and so is what it has added. There was a lever before, with a sign of its own: the two belong together.`,
  },
  {
    id: 'other-height',
    confuses: `lever at the ${heights.there}`,
    value: (item) => moment(item, other(item)),
    text: () =>
      phrase`That takes the lever at the ${heights.there}. Here it is the one at the ${heights.here}: ask who holds the torque of the wheel.`,
  },
];

/** The corner before, its wheel as large as any. */
function withoutSpacer(item: Item): Corner {
  const loadedRadius = 0.31;
  const inclination = Math.atan((spindle(item) - scrub(item)) / loadedRadius);
  return cornerAtRoad({ scrubRadius: scrub(item), inclination, loadedRadius });
}

const brake = ({ brake_N }: Item): SeenForce => ({
  at: 'road',
  force: -brake_N,
  says: given(brake_N, 'N').figure,
});
const blow = ({ blow_N }: Item): SeenForce => ({
  at: 'centre',
  force: -blow_N,
  says: given(blow_N, 'N').figure,
});

/** One spacer, two levers: what it does to a hard stop and to a kerb. */
export const spacerMoments: Kind<Item> = {
  id: 'spacer-moments',
  version: 1,
  title: 'What the spacer does to both levers',
  lesson: 'spacers-and-inset',
  level: 2,
  draw: (random) => ({
    side: random.pick(['left', 'right']),
    scrub_mm: random.pick([-1, 1]) * random.integer(3, 18),
    spindle_mm: random.integer(50, 90),
    spacer_mm: random.integer(8, 40),
    brake_N: random.grid(1500, 5000, 100),
    blow_N: random.grid(2000, 8000, 100),
  }),
  sound: ({ scrub_mm, spacer_mm }) => scrub_mm + spacer_mm >= 4,
  pattern: ({ scrub_mm }) => (scrub_mm > 0 ? 'from inboard' : 'from outboard'),
  question: ({ side, scrub_mm, spindle_mm, spacer_mm, brake_N, blow_N }) =>
    phrase`On the ${side} front wheel the scrub radius is ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)} and the spindle offset ${directed(spindle_mm, 'mm', QUANTITIES.spindleOffset)}. A spacer ${mm(spacer_mm)} thick goes in. Then, on a rough road, the caliper on the carrier brakes with ${given(brake_N, 'N')} at the road, and at that moment an edge pushes the wheel centre rearward with ${given(blow_N, 'N')}. Leave out the little that the lean of the axis takes off.`,
  ...forcePictures<Item>({
    side: ({ side }) => side,
    left: (item) => cornerWithLevers(atRoad(item), atCentre(item)),
    given: (item) => ({
      corner: withoutSpacer(item),
      measures: [
        { of: 'spindleOffset', says: mm(Math.abs(item.spindle_mm)).figure },
        { of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure },
      ],
    }),
    forces: (item) => [brake(item), blow(item)],
    parts: {
      brake: { seen: 'moment', force: brake },
      blow: { seen: 'moment', force: blow },
    },
  }),
  parts: [
    {
      id: 'brake',
      quantity: QUANTITIES.brakeMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of braking about the steering axis, with the spacer',
      value: brakeNow,
      hint: () =>
        phrase`A brake on the carrier counts at the road. Put its sign to the scrub radius, add the spacer, and then multiply, in metres.`,
      slips: [
        ...momentSlips(brakeNow),
        ...leverSlips(braked, scrub, atCentre, { here: 'road', there: 'wheel centre' }),
      ],
      solution: (item, _earlier, value) =>
        phrase`The lever is scrub radius and spacer together, ${rounded(atRoad(item), 'm', 3)}: ${given(item.brake_N, 'N')} · ${rounded(atRoad(item), 'm', 3)} = ${rounded(Math.abs(value), 'Nm', 1)}, ${sign(value, QUANTITIES.brakeMoment)}.`,
    },
    {
      id: 'blow',
      quantity: QUANTITIES.blowMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the blow about the steering axis, with the spacer',
      value: blowNow,
      hint: () =>
        phrase`A wheel that rolls freely passes no torque: the blow counts at the wheel centre. Which lever is that, and what has the spacer done to it?`,
      slips: [
        ...momentSlips(blowNow),
        ...leverSlips(struck, spindle, atRoad, { here: 'wheel centre', there: 'road' }),
      ],
      solution: (item, _earlier, value) =>
        phrase`The lever is spindle offset and spacer together, ${rounded(atCentre(item), 'm', 3)}: ${given(item.blow_N, 'N')} · ${rounded(atCentre(item), 'm', 3)} = ${rounded(Math.abs(value), 'Nm', 1)}, ${sign(value, QUANTITIES.blowMoment)}. The same thickness has gone into both levers; the short one feels it more.`,
    },
    {
      id: 'together',
      quantity: OWN_QUANTITIES.momentsTogether,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of brake and blow together',
      value: (_item, earlier) => step(earlier, 0) + step(earlier, 1),
      sum: 'rounded',
      hint: () =>
        phrase`Both forces point rearward. With the spacer in, on which side of the axis does each of them push?`,
      slips: [
        {
          id: 'difference',
          confuses: 'difference of the two',
          value: (_item, earlier) => step(earlier, 1) - step(earlier, 0),
          text: () =>
            phrase`That is the difference of the two, as if they turned the wheel against each other. With a negative scrub radius they would. With the spacer in, both push outboard of the axis.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction',
          value: (_item, earlier) => -step(earlier, 0) - step(earlier, 1),
          text: () =>
            phrase`The size fits, but the direction is turned round. A push rearward, outboard of the axis, swings the front of the wheel away from the car: which way is that on this side?`,
        },
        {
          id: 'blow-alone',
          confuses: 'blow alone',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That is the blow alone, as with the foot off the brake. The brake turns the wheel about the same axis at the same time.`,
        },
        {
          id: 'old-brake',
          confuses: 'brake without the spacer',
          value: (item, earlier) => step(earlier, 1) + braked(item, scrub(item)),
          text: () =>
            phrase`That adds the brake without the spacer. The spacer is in for both of them: take both moments as they are now.`,
        },
      ],
      solution: (_item, earlier, value) =>
        phrase`They turn the wheel the same way, so they add: ${term(rounded(step(earlier, 0), 'Nm', 1))} + ${term(rounded(step(earlier, 1), 'Nm', 1))} = ${rounded(value, 'Nm', 1)}, ${sign(value, OWN_QUANTITIES.momentsTogether)}.`,
    },
  ],
};
