import type { Side } from '#core/corner.ts';
import { choosing, chosen, type Choice } from '../forms/choosing.ts';
import { keptStep } from '../forms/kept.ts';
import { letterOf } from '../forms/rank.ts';
import { shuffled } from '../forms/shuffled.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { momentWithLever } from '../paper/along.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { given, mm, phrase, rounded, si, sign, type Phrase } from '../phrase.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';
import type { CornerPicture, CornerPoint } from '../pictures/picture.ts';
import { momentSlips } from '../slips/moment-slips.ts';

type Case = 'caliper' | 'inboard' | 'recuperation' | 'drive' | 'edge';

interface Item {
  readonly which: Case;
  readonly side: Side;
  readonly force_N: number;
  readonly roadLever_mm: number;
  readonly hubLever_mm: number;
  readonly listed: readonly number[];
}

interface CaseFacts {
  readonly tells: (side: Side, force: Phrase) => Phrase;
  readonly why: string;
  readonly at: 'contact' | 'centre';
  readonly ahead: 1 | -1;
}

const CASES: Readonly<Record<Case, CaseFacts>> = {
  caliper: {
    tells: (side, force) =>
      phrase`A car brakes with calipers on its front carriers; the road holds the ${side} front tyre back with ${force}.`,
    why: 'The caliper hands the brake torque to the carrier, and that brings the force down to the contact centre',
    at: 'contact',
    ahead: -1,
  },
  inboard: {
    tells: (side, force) =>
      phrase`A car has its front brake discs beside the gearbox and brakes; the road holds the ${side} front tyre back with ${force}.`,
    why: 'The shaft takes the brake torque past the carrier, and what the bearing passes on is the force at the wheel centre',
    at: 'centre',
    ahead: -1,
  },
  recuperation: {
    tells: (side, force) =>
      phrase`An electric car slows down by its motor on the front wheels alone; the road holds the ${side} front tyre back with ${force}.`,
    why: 'The shaft takes the torque past the carrier to the motor, and what the bearing passes on is the force at the wheel centre',
    at: 'centre',
    ahead: -1,
  },
  drive: {
    tells: (side, force) =>
      phrase`A car with front-wheel drive climbs a hill; the road pushes the ${side} front tyre forward with ${force}.`,
    why: 'The torque comes through the shaft, and what the bearing passes on is the force at the wheel centre',
    at: 'centre',
    ahead: 1,
  },
  edge: {
    tells: (side, force) =>
      phrase`A car rolls over an edge with its brakes off; the edge pushes the ${side} front wheel rearward with ${force} along the car.`,
    why: 'A wheel that rolls freely takes no torque, and what the bearing passes on is the force at the wheel centre',
    at: 'centre',
    ahead: -1,
  },
};

const atRoad = ({ which }: Item): boolean => CASES[which].at === 'contact';
const braked = (item: Item): string =>
  atRoad(item) ? 'the carrier holds the torque' : 'nobody on the carrier holds the torque';

const POINTS: readonly (Choice<Item> & { readonly at: CornerPoint })[] = [
  {
    at: 'contact',
    id: 'contact',
    words: () => ['in the middle of the tyre, on the road'],
    confuses: 'touches the tyre',
    text: () =>
      phrase`That is where the road touches the tyre. The force does act there on the tyre; on the carrier it counts there only when the carrier holds the torque, as with a caliper. Here it does not.`,
  },
  {
    at: 'centre',
    id: 'centre',
    words: () => ['in the middle of the wheel, at its centre'],
    confuses: 'bearing',
    text: () =>
      phrase`That is what the bearing alone passes on. It would be all if nobody on the carrier held the torque; the caliper does, and together with the torque the force counts at the road.`,
  },
  {
    at: 'ground',
    id: 'ground',
    words: () => ['on the steering axis, where it meets the road'],
    confuses: 'point of the axis',
    text: (item) =>
      phrase`That is a point of the axis itself: a force there turns nothing, for want of a lever. Here ${braked(item)}, so look for the point of the wheel ${atRoad(item) ? 'on the road' : 'at hub height'}.`,
  },
  {
    at: 'axisAtCentre',
    id: 'axis-at-centre',
    words: () => ['on the steering axis, at the height of the wheel centre'],
    confuses: 'foot of the lever',
    text: (item) =>
      phrase`That is the foot of the lever, on the axis: a force there would turn nothing. Here ${braked(item)}, so look for the point of the wheel ${atRoad(item) ? 'on the road' : 'at the same height'}.`,
  },
  {
    at: 'top',
    id: 'top',
    words: () => ['in the middle of the tyre, at its top'],
    confuses: 'top of the tyre',
    text: (item) =>
      phrase`At the top of the tyre nothing touches it. A torque can move the line of a force up or down, but here ${braked(item)}, which leaves it ${atRoad(item) ? 'at the road' : 'at the wheel centre'}.`,
  },
];

const corner = ({ roadLever_mm, hubLever_mm }: Item) => {
  const loadedRadius = 0.31;
  const inclination = Math.atan(si(hubLever_mm - roadLever_mm, 'mm') / loadedRadius);
  return cornerAtRoad({ scrubRadius: si(roadLever_mm, 'mm'), inclination, loadedRadius });
};

const picture = (item: Item): CornerPicture => ({
  scene: 'corner',
  view: 'front',
  corner: corner(item),
  points: item.listed.flatMap((place, i) => {
    const choice = POINTS[place];
    return choice ? [{ at: choice.at, says: letterOf(i) }] : [];
  }),
});

/** The force where it counts for the carrier. */
const counted = (item: Item): SeenForce => ({
  at: atRoad(item) ? 'road' : 'centre',
  force: CASES[item.which].ahead * item.force_N,
  says: given(item.force_N, 'N').figure,
});

/** Lever at a point of the drawing; none on the axis, and nobody gives one at the top of the tyre. */
const leverAt = (item: Item, id: string | undefined): number => {
  if (id === 'contact') return si(item.roadLever_mm, 'mm');
  return id === 'centre' ? si(item.hubLever_mm, 'mm') : NaN;
};

function moment(item: Item, lever: number): number {
  const { at, ahead } = CASES[item.which];
  return momentWithLever(
    lever,
    item.side,
    at === 'contact'
      ? { by: 'brake', force: item.force_N }
      : { by: 'shaft', force: ahead * item.force_N },
  );
}

const turned = keptStep((item: Item, earlier: Earlier): number =>
  moment(item, leverAt(item, chosen(POINTS, item.listed, step(earlier, 0)))),
);

/** The point of the wheel where a force counts for the carrier, and the moment that comes of it. */
export const markedPoint: Kind<Item> = {
  id: 'marked-point',
  version: 1,
  title: 'Where does the force count?',
  lesson: 'braking-at-the-ground',
  level: 2,
  draw: (random) => ({
    which: random.pick([
      'caliper',
      'caliper',
      'caliper',
      'inboard',
      'recuperation',
      'drive',
      'edge',
    ]),
    side: random.pick(['left', 'right']),
    force_N: 50 * random.integer(16, 80),
    roadLever_mm: random.integer(14, 34),
    hubLever_mm: random.integer(58, 98),
    listed: shuffled(random, POINTS.length),
  }),
  sound: () => true,
  pattern: ({ which }) => which,
  question: ({ which, side, force_N, roadLever_mm, hubLever_mm }) =>
    phrase`${CASES[which].tells(side, [given(force_N, 'N')])} About the steering axis, which passes inboard of it, the wheel has a lever of ${mm(roadLever_mm)} for a force along the car at the road, and of ${mm(hubLever_mm)} for one at the height of the wheel centre. The drawing shows a left front wheel from the front: at which of the lettered points does the force count for the carrier?`,
  ...forcePictures<Item>({
    side: ({ side }) => side,
    left: corner,
    given: () => ({}),
    forces: (item) => [counted(item)],
    parts: { moment: { seen: 'moment', force: counted } },
    other: (item, { slip }) => {
      const taken = POINTS.find(({ id }) => id === slip);
      return (
        taken && {
          ...picture(item),
          points: [{ at: CASES[item.which].at, says: 'counts here' }],
          wrong: { points: [{ at: taken.at, says: 'yours' }] },
        }
      );
    },
  }),
  picture,
  parts: [
    choosing<Item>({
      id: 'point',
      name: 'point where the force counts',
      label: 'Its letter in the drawing',
      form: 'mark',
      choices: POINTS,
      listed: ({ listed }) => listed,
      right: ({ which }) => CASES[which].at,
      hint: () =>
        phrase`The bearing lets a force pass at the wheel centre, but no torque. So who holds the torque of this force: something on the carrier, or something else?`,
      solution: ({ which }) => phrase`${CASES[which].why}.`,
    }),
    {
      id: 'moment',
      quantity: OWN_QUANTITIES.momentOfForce,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment about the steering axis',
      value: turned,
      sum: 'rounded',
      hint: () =>
        phrase`Force times the lever at your point, in newtons and metres. Then look from above: the axis passes inboard of the wheel, and which way does the force push?`,
      slips: [
        ...momentSlips(turned),
        {
          id: 'other-height',
          confuses: 'other height',
          value: (item) =>
            moment(item, si(atRoad(item) ? item.hubLever_mm : item.roadLever_mm, 'mm')),
          text: () =>
            phrase`That works with the lever at the other height. Ask who holds the torque: a caliper on the carrier brings the force down to the road, anybody else leaves it at the wheel centre.`,
        },
      ],
      solution: (item, earlier, value) => {
        const lever = leverAt(item, chosen(POINTS, item.listed, step(earlier, 0)));
        return phrase`${given(item.force_N, 'N')} · ${rounded(lever, 'm', 3)} = ${rounded(Math.abs(value), 'Nm', 1)}. The force pushes ${CASES[item.which].ahead > 0 ? 'forward' : 'rearward'} and the axis passes inboard of it, so it turns the ${item.side} wheel ${sign(value, OWN_QUANTITIES.momentOfForce)}.`;
      },
    },
  ],
};
