import { otherSide, type Side } from '#core/corner.ts';
import { fromSI } from '#core/units/convert.ts';
import { step, type Earlier, type Kind, type Slip } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { leverOfLoad, loadMoment } from '../paper/across.ts';
import { deg, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { senseOf, wrongTurn } from '../pictures/axle-pictures.ts';
import type { AxleTurns } from '../pictures/picture.ts';

interface Item {
  readonly left_N: number;
  readonly right_N: number;
  readonly trail_mm: number;
  readonly inclination_deg: number;
}

const trail = ({ trail_mm }: Item): number => si(trail_mm, 'mm');
const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const load = (side: Side, { left_N, right_N }: Item): number =>
  side === 'left' ? left_N : right_N;
const turning = (side: Side, item: Item, earlier: Earlier): number =>
  loadMoment(side, load(side, item), step(earlier, 0));
const left = (item: Item, earlier: Earlier): number => turning('left', item, earlier);
const right = (item: Item, earlier: Earlier): number => turning('right', item, earlier);

const turns = (item: Item): AxleTurns => {
  const lever = leverOfLoad({ trail: trail(item), inclination: inclination(item) });
  const [of_left, of_right] = [left(item, [lever]), right(item, [lever])];
  return {
    left: senseOf(of_left),
    right: senseOf(of_right),
    both: senseOf(of_left + of_right),
  };
};

/** Wrong roads to the moment of either wheel. */
const wheelSlips = (side: Side, leverFound: string): readonly Slip<Item>[] => [
  {
    id: 'millimetres',
    confuses: 'millimetres',
    value: (item, earlier) => 1000 * turning(side, item, earlier),
    text: () =>
      phrase`That multiplies newtons by millimetres. Some drawings do give moments in N·mm; in N·m the lever has to be in metres, a thousand times smaller a number.`,
  },
  {
    id: 'whole-trail',
    confuses: 'whole trail',
    value: (item) => loadMoment(side, load(side, item), trail(item)),
    text: () =>
      phrase`That works with the whole trail. It is the lever of a force across the car; of the upright load only the share counts that you found in the ${leverFound}.`,
  },
  {
    id: 'other-load',
    confuses: 'load of the other wheel',
    value: (item, earlier) => loadMoment(side, load(otherSide(side), item), step(earlier, 0)),
    text: () =>
      phrase`That takes the load of the other wheel. Each wheel is turned by what it carries itself; here it is the ${side} one’s turn.`,
  },
];

/** The wheel loads straight ahead: each turns its wheel toe-in, and the rack feels the difference. */
export const loadLeftRight: Kind<Item> = {
  id: 'load-left-right',
  version: 1,
  title: 'Loaded on one side',
  lesson: 'side-weight-parking',
  level: 2,
  draw: (random) => {
    const lighter = random.integer(50, 75);
    const more = random.integer(14, 40);
    const heavySide = random.pick(['left', 'right']);
    const heavier = lighter + more;
    return {
      left_N: 50 * (heavySide === 'left' ? heavier : lighter),
      right_N: 50 * (heavySide === 'left' ? lighter : heavier),
      trail_mm: random.integer(18, 44),
      inclination_deg: 0.5 * random.integer(18, 32),
    };
  },
  sound: () => true,
  question: ({ left_N, right_N, trail_mm, inclination_deg }) =>
    phrase`A van is loaded on one side. On corner scales its left front wheel has ${given(left_N, 'N')}, its right one ${given(right_N, 'N')}. The wheels stand straight ahead. Both steering axes lean ${deg(inclination_deg)} inboard without caster and meet the road ${mm(trail_mm)} ahead of the contact centre; the scrub radius is nought.`,
  solved: (item) => ({ scene: 'axle', scrub_mm: 0, turns: turns(item) }),
  wrong: (item, road) =>
    road.part === 'lever'
      ? undefined
      : wrongTurn(
          { scene: 'axle', scrub_mm: 0 },
          road.part === 'net' ? 'both' : road.part === 'left' ? 'left' : 'right',
          road,
          turns(item),
        ),
  drawnTrue: ['net'],
  parts: [
    {
      id: 'lever',
      quantity: OWN_QUANTITIES.lever,
      unit: 'mm',
      decimals: 2,
      label: 'Lever of a wheel load about the leaning axis',
      value: (item) => leverOfLoad({ trail: trail(item), inclination: inclination(item) }),
      possible: (value) => value > 0,
      hint: () =>
        phrase`The load points straight up and passes behind the axis. About an upright axis it would turn nothing. Which share of the trail does the lean make into a lever: the sine or the cosine?`,
      slips: [
        {
          id: 'cosine',
          confuses: 'cosine',
          value: (item) => trail(item) * Math.cos(inclination(item)),
          text: () =>
            phrase`That takes the cosine, the share for a force that lies level. The wheel load stands upright: about an axis that did not lean it would turn nothing at all. Its share is the sine.`,
        },
        {
          id: 'whole-trail',
          confuses: 'whole trail',
          value: trail,
          text: () =>
            phrase`That takes the whole trail for the lever. It would be right for a force across the car. The wheel load runs nearly along the axis, and only the sine of the lean turns the wheel.`,
        },
        {
          id: 'divided',
          confuses: 'dividing by the sine',
          value: (item) => trail(item) / Math.sin(inclination(item)),
          text: () =>
            phrase`That comes from dividing by the sine, and is longer than the trail itself. The lever can only be a share of it: multiply.`,
        },
        {
          id: 'calculator-on-radians',
          confuses: 'radians',
          value: (item) => trail(item) * Math.abs(Math.sin(fromSI(inclination(item), 'deg'))),
          text: () =>
            phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; the inclination here is in degrees. Set it to DEG and take the sine again.`,
        },
      ],
      solution: ({ trail_mm, inclination_deg }, _earlier, value) =>
        phrase`Only the lean of the axis makes a lever for an upright force: ${mm(trail_mm)} · sin ${deg(inclination_deg)} = ${rounded(value, 'mm', 2)}.`,
    },
    {
      id: 'left',
      quantity: OWN_QUANTITIES.momentOnLeft,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the left wheel load',
      value: left,
      hint: () =>
        phrase`Load times lever. Lean a wheel’s axis inboard at its top and press up behind it: the front of the wheel swings inboard. Which way is that on the left?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'direction',
          value: (item, earlier) => -left(item, earlier),
          text: () =>
            phrase`The size fits, the direction does not: it belongs to the right wheel, the mirror image. With the axis ahead of the tyre and leaning inboard, the load turns each front wheel toe-in: the left one to the right.`,
        },
        ...wheelSlips('left', 'step before'),
      ],
      solution: ({ left_N }, earlier, value) =>
        phrase`${given(left_N, 'N')} · ${rounded(step(earlier, 0), 'm', 5)} = ${rounded(Math.abs(value), 'Nm', 1)}. It turns the left wheel toe-in: ${sign(value, OWN_QUANTITIES.momentOnLeft)}.`,
    },
    {
      id: 'right',
      quantity: OWN_QUANTITIES.momentOnRight,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the right wheel load',
      value: right,
      hint: () =>
        phrase`The right wheel is the mirror image of the left one, with a load of its own. It is turned toe-in as well; which way is that on the right?`,
      slips: [
        {
          id: 'same-way',
          confuses: 'direction',
          value: (item, earlier) => -right(item, earlier),
          text: () =>
            phrase`The size fits, the direction is that of the left wheel. The right corner is its mirror image: toe-in there is to the left.`,
        },
        ...wheelSlips('right', 'first step'),
      ],
      solution: ({ right_N }, earlier, value) =>
        phrase`${given(right_N, 'N')} · ${rounded(step(earlier, 0), 'm', 5)} = ${rounded(Math.abs(value), 'Nm', 1)}. Toe-in on this side is ${sign(value, OWN_QUANTITIES.momentOnRight)}.`,
    },
    {
      id: 'net',
      quantity: OWN_QUANTITIES.momentOfBoth,
      unit: 'Nm',
      decimals: 1,
      label: 'What is left of both together',
      value: (_item, earlier) => step(earlier, 1) + step(earlier, 2),
      sum: 'rounded',
      hint: () =>
        phrase`The rack joins both wheels. Equal and opposite moments would cancel on it. Add the two with their signs.`,
      slips: [
        {
          id: 'sizes-added',
          confuses: 'sizes without their signs',
          value: (_item, earlier) => step(earlier, 2) - step(earlier, 1),
          text: () =>
            phrase`That adds the sizes without their signs, as if both turned the same way. That much stretches or squeezes the rods between them. On the rack the two work against each other.`,
        },
        {
          id: 'turned-round',
          confuses: 'heavier wheel',
          value: (_item, earlier) => -(step(earlier, 1) + step(earlier, 2)),
          text: () =>
            phrase`The size fits, the direction does not. The heavier wheel has the larger moment, so the sum goes the way that this wheel is turned.`,
        },
        {
          id: 'halved',
          confuses: 'mean of the two',
          value: (_item, earlier) => (step(earlier, 1) + step(earlier, 2)) / 2,
          text: () =>
            phrase`That is the mean of the two. Both moments work on one rack, and neither is halved there: the sum is asked for.`,
        },
        {
          id: 'one-alone',
          confuses: 'right wheel alone',
          value: (_item, earlier) => step(earlier, 2),
          text: () =>
            phrase`That is the right wheel alone. It would be so with the left front wheel in the air. On the rack the left one works against it.`,
        },
      ],
      solution: (_item, earlier, value) =>
        phrase`With their signs, to the left positive: ${rounded(step(earlier, 1), 'Nm', 1)} + ${term(rounded(step(earlier, 2), 'Nm', 1))} = ${rounded(value, 'Nm', 1)}. The load on one side pulls the steering ${sign(value, OWN_QUANTITIES.momentOfBoth)}. With equal loads nothing would be left.`,
    },
  ],
};
