import { QUANTITIES } from '#core/quantities.ts';
import { casterBySwing, swingFactor } from '#core/swing-by-rule.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { between } from '../paper/plausible.ts';
import { bare, computed, deg, directed, phrase, rounded, si, sign, term } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';
import { swingSlips } from '../slips/swing-slips.ts';

interface Item {
  /** The left wheel's camber turned in, straight ahead and turned out, the turn each way; the right wheel's caster. */
  readonly turnedIn_deg: number;
  readonly ahead_deg: number;
  readonly turnedOut_deg: number;
  readonly turn_deg: number;
  readonly right_deg: number;
}

const turnedIn = ({ turnedIn_deg }: Item): number => si(turnedIn_deg, 'deg');
const ahead = ({ ahead_deg }: Item): number => si(ahead_deg, 'deg');
const turnedOut = ({ turnedOut_deg }: Item): number => si(turnedOut_deg, 'deg');
const turn = ({ turn_deg }: Item): number => si(turn_deg, 'deg');
const right = ({ right_deg }: Item): number => si(right_deg, 'deg');
const twiceTheSine = (item: Item): number => 1 / swingFactor(turn(item));

const ofLeft = (item: Item): number =>
  casterBySwing(turnedOut(item) - turnedIn(item), 0, swingFactor(turn(item)));

/** The workshop's way to the caster, camber at two locks, and one side held against the other. */
export const casterFromSwing: Kind<Item> = {
  id: 'caster-from-swing',
  version: 1,
  title: 'Camber at two locks',
  lesson: 'the-wheel-turns',
  level: 2,
  draw: (random) => {
    // Tenths of a degree, as whole numbers until the end.
    const straight = random.pick([-1, 1]) * random.integer(3, 15);
    const both = random.integer(3, 10);
    const turn_deg = random.pick([20, 20, 25]);
    const eachWay = random.pick([-1, 1, 1, 1, 1]) * random.integer(11, 36);
    const apart = random.pick([-1, 1]) * random.integer(5, 20);
    return {
      turnedIn_deg: (straight + both - eachWay) / 10,
      ahead_deg: straight / 10,
      turnedOut_deg: (straight + both + eachWay) / 10,
      turn_deg,
      right_deg: (Math.round((60 * eachWay) / turn_deg) + apart) / 10,
    };
  },
  sound: ({ turnedIn_deg, turnedOut_deg, turn_deg }) =>
    turnedIn_deg !== 0 &&
    turnedOut_deg !== 0 &&
    between(Math.abs(turnedOut_deg - turnedIn_deg) * (30 / turn_deg), 2, 11),
  pattern: ({ turnedOut_deg, turnedIn_deg }) =>
    turnedOut_deg > turnedIn_deg ? 'gains turned out' : 'loses turned out',
  question: ({ turnedIn_deg, ahead_deg, turnedOut_deg, turn_deg, right_deg }) =>
    phrase`A left front wheel stands on a turn plate, and its camber is read three times, with the side to which its top leans: ${directed(ahead_deg, 'deg', QUANTITIES.camber)} straight ahead, ${directed(turnedIn_deg, 'deg', QUANTITIES.camber)} turned in by ${deg(turn_deg)}, ${directed(turnedOut_deg, 'deg', QUANTITIES.camber)} turned out by as much. Find the caster by the workshop’s rule: camber turned out less camber turned in, divided by twice the sine of the turn. The right wheel has a caster of ${directed(right_deg, 'deg', QUANTITIES.caster)}. On which side is the caster larger, and by how much?`,
  picture: (item) => ({
    scene: 'bars',
    title: 'Camber turned in, straight ahead and turned out, outboard upward',
    bars: [item.turnedIn_deg, item.ahead_deg, item.turnedOut_deg].map((value) => ({
      says: deg(Math.abs(value)).figure,
      value,
    })),
  }),
  solved: (item) => ({
    scene: 'bars',
    title: 'Caster on the left and on the right, rearward upward',
    bars: [
      { says: `left ${rounded(ofLeft(item), 'deg', 1).figure}`, value: ofLeft(item) },
      { says: `right ${deg(item.right_deg).figure}`, value: right(item) },
    ],
  }),
  wrong: (item, road) => {
    switch (road.part) {
      case 'difference':
        return wrongBar(
          'Camber turned in and turned out, and the one less the other',
          [
            { says: 'in', value: turnedIn(item) },
            { says: 'out', value: turnedOut(item) },
            { says: 'out less in', value: road.answer },
          ],
          road,
        );
      case 'caster':
        return wrongBar(
          'Difference and caster',
          [
            { says: 'out less in', value: step(road.earlier, 0) },
            { says: 'caster', value: road.answer },
          ],
          road,
        );
      default:
        return wrongBar(
          'Caster on the left and on the right, and their difference',
          [
            { says: 'left', value: step(road.earlier, 1) },
            { says: 'right', value: right(item) },
            { says: 'left less right', value: road.answer },
          ],
          road,
        );
    }
  },
  parts: [
    {
      id: 'difference',
      quantity: OWN_QUANTITIES.camberDifference,
      unit: 'deg',
      decimals: 1,
      label: 'Camber turned out, less camber turned in',
      value: (item) => turnedOut(item) - turnedIn(item),
      sum: 'exact',
      hint: () =>
        phrase`Give each reading its sign first: outboard is positive. Then take the one turned in away from the one turned out.`,
      slips: [
        {
          id: 'sign-lost',
          confuses: 'sign of the camber',
          value: (item) => turnedOut(item) + turnedIn(item),
          text: () =>
            phrase`That adds the two readings. It would be right if the sign of the camber turned in were the other one. Outboard is positive, inboard negative, and the one is to be taken away from the other.`,
        },
        {
          id: 'turned-round',
          confuses: 'in and out',
          value: (item) => turnedIn(item) - turnedOut(item),
          text: () =>
            phrase`The size fits, but in and out have changed places. The rule counts the camber turned out, less the camber turned in: an axis that leans back makes that positive.`,
        },
        {
          id: 'from-straight-ahead',
          confuses: 'reading straight ahead',
          value: (item) => turnedOut(item) - ahead(item),
          text: () =>
            phrase`That starts from the reading straight ahead. From there to one lock the inclination has its share too. From lock to lock it drops out, because it is the same on both.`,
        },
        {
          id: 'halved',
          confuses: 'half of the difference',
          value: (item) => (turnedOut(item) - turnedIn(item)) / 2,
          text: () =>
            phrase`That is half of the difference, the share of one lock. The two comes in with the sine, in the next step; here the whole difference is asked for.`,
        },
      ],
      solution: ({ turnedIn_deg, turnedOut_deg }, _earlier, value) =>
        phrase`Out less in, each with its sign: ${deg(turnedOut_deg)} − ${term(deg(turnedIn_deg))} = ${rounded(value, 'deg', 1)}.`,
    },
    {
      id: 'caster',
      quantity: QUANTITIES.caster,
      unit: 'deg',
      decimals: 1,
      label: 'Caster of the left wheel by the rule',
      value: (item, earlier) => casterBySwing(step(earlier, 0), 0, swingFactor(turn(item))),
      hint: () =>
        phrase`Divide by twice the sine of the turn that was made each way, not of the whole swing.`,
      slips: swingSlips<Item>({ found: 'caster', turn }),
      solution: (item, earlier, value) =>
        phrase`Twice the sine of ${deg(item.turn_deg)} is ${bare(twiceTheSine(item), 4)}, and ${rounded(step(earlier, 0), 'deg', 1)} ÷ ${bare(twiceTheSine(item), 4)} = ${computed(value, 'angle')}: the top of the axis leans ${sign(value, QUANTITIES.caster)}. The camber straight ahead was not needed.`,
    },
    {
      id: 'apart',
      quantity: OWN_QUANTITIES.casterDifference,
      unit: 'deg',
      decimals: 1,
      label: 'Difference of the casters, left less right',
      value: (item, earlier) => step(earlier, 1) - right(item),
      sum: 'rounded',
      hint: () =>
        phrase`Rearward is positive, forward negative. Take the right one away from the left one.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'left and right',
          value: (item, earlier) => right(item) - step(earlier, 1),
          text: () =>
            phrase`The size fits, but left and right have changed places. Look which of the two wheels has the axis that leans farther back.`,
        },
        {
          id: 'added',
          confuses: 'sum of both casters',
          value: (item, earlier) => step(earlier, 1) + right(item),
          text: () =>
            phrase`That is the sum of both casters. How far the two sides are from each other is a difference, each side with its sign.`,
        },
        {
          id: 'swing-compared',
          confuses: 'difference of the cambers',
          value: (item, earlier) => step(earlier, 0) - right(item),
          text: () =>
            phrase`That holds the difference of the cambers against the caster of the other side. What the gauge shows is only a part of the caster; compare what the rule makes of it.`,
        },
        {
          id: 'twice',
          confuses: 'twice the difference',
          value: (item, earlier) => 2 * (step(earlier, 1) - right(item)),
          text: () =>
            phrase`That is twice the difference. Toe is added up over both wheels, and then a change counts on either side. Caster belongs to each wheel: the one less the other, once.`,
        },
      ],
      solution: ({ right_deg }, earlier, value) =>
        phrase`Left less right: ${rounded(step(earlier, 1), 'deg', 1)} − ${term(deg(right_deg))} = ${rounded(value, 'deg', 1)}, larger on the ${sign(value, OWN_QUANTITIES.casterDifference)}. What is allowed stands on the maker’s sheet.`,
    },
  ],
};
