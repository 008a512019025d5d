import { camberFromCaster, camberFromInclination } from '#core/camber-by-rule.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { bare, deg, directed, phrase, rounded, si, sign, term } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';
import type { Bar } from '../pictures/picture.ts';

interface Item {
  /** Camber read on the turn plates, the turn each way, and full lock. */
  readonly turnedIn_deg: number;
  readonly ahead_deg: number;
  readonly turnedOut_deg: number;
  readonly turn_deg: number;
  readonly lock_deg: number;
  readonly way: 'in' | 'out';
}

const turnedIn = ({ turnedIn_deg }: Item): number => si(turnedIn_deg, 'deg');
const ahead = ({ ahead_deg }: Item): number => si(ahead_deg, 'deg');
const turnedOut = ({ turnedOut_deg }: Item): number => si(turnedOut_deg, 'deg');
const turn = ({ turn_deg }: Item): number => si(turn_deg, 'deg');
const lock = ({ lock_deg }: Item): number => si(lock_deg, 'deg');
const wayOf = ({ way }: Item): 1 | -1 => (way === 'out' ? 1 : -1);

/** How much larger each share is at full lock than on the plate. */
const casterGrows = (item: Item): number =>
  camberFromCaster(1, lock(item)) / camberFromCaster(1, turn(item));
const inclinationGrows = (item: Item): number =>
  camberFromInclination(1, lock(item)) / camberFromInclination(1, turn(item));

const readings = (item: Item): readonly Bar[] =>
  [item.turnedIn_deg, item.ahead_deg, item.turnedOut_deg].map((value) => ({
    says: deg(Math.abs(value)).figure,
    value: si(value, 'deg'),
  }));

/** Three readings taken apart into what the caster did and what the inclination did, and on to another angle. */
export const camberAtFullLock: Kind<Item> = {
  id: 'camber-at-full-lock',
  version: 1,
  title: 'From the plates to full lock',
  lesson: 'the-wheel-turns',
  level: 3,
  draw: (random) => {
    // Tenths of a degree, as whole numbers until the end.
    const way = random.pick<Item['way']>(['in', 'out']);
    // Turned in, a wide plate or a little caster would leave little to tell full lock from the plate.
    const turn_deg = way === 'in' ? 20 : random.pick([20, 25]);
    const both = random.integer(5, turn_deg === 20 ? 9 : 13);
    const eachWay = way === 'in' ? random.integer(28, 42) : random.integer(12, 36);
    const straight = random.pick([-1, 1]) * (both + random.integer(2, 6));
    return {
      turnedIn_deg: (straight + both - eachWay) / 10,
      ahead_deg: straight / 10,
      turnedOut_deg: (straight + both + eachWay) / 10,
      turn_deg,
      lock_deg: turn_deg + random.integer(12, 19),
      way,
    };
  },
  sound: ({ turnedIn_deg, turnedOut_deg }) => turnedIn_deg !== 0 && turnedOut_deg !== 0,
  pattern: ({ way }) => `turned ${way}`,
  question: ({ turnedIn_deg, ahead_deg, turnedOut_deg, turn_deg, lock_deg, way }) =>
    phrase`On a turn plate the camber of a front wheel is read three times, with the side to which its top leans: ${directed(ahead_deg, 'deg', QUANTITIES.camber)} straight ahead, ${directed(turnedIn_deg, 'deg', QUANTITIES.camber)} turned in by ${deg(turn_deg)}, ${directed(turnedOut_deg, 'deg', QUANTITIES.camber)} turned out by as much. Full lock is ${deg(lock_deg)} turned ${way}, farther than the plate goes. By the workshop’s rule the share of the caster grows with the sine of the turn, the share of the inclination with one less the cosine. What is the camber at full lock?`,
  picture: (item) => ({
    scene: 'bars',
    title: 'Camber turned in, straight ahead and turned out, outboard upward',
    bars: readings(item),
  }),
  wrong: (item, road) =>
    wrongBar(
      'Camber turned in, straight ahead and turned out, and what is asked for, outboard upward',
      [
        ...readings(item).map((bar, i) => ({ ...bar, says: ['in', 'ahead', 'out'][i] ?? '' })),
        { says: 'asked', value: road.answer },
      ],
      road,
    ),
  parts: [
    {
      id: 'from-caster',
      quantity: QUANTITIES.camberFromCaster,
      unit: 'deg',
      decimals: 2,
      label: 'Camber from the caster, turned out on the plate',
      value: (item) => (turnedOut(item) - turnedIn(item)) / 2,
      sum: 'exact',
      possible: (value) => Math.abs(value) < si(8, 'deg'),
      hint: () =>
        phrase`The caster does the opposite on the two locks, the inclination the same. What is left if you take one lock from the other, and how many times is the share of the caster in it?`,
      slips: [
        {
          id: 'difference',
          confuses: 'difference from lock to lock',
          value: (item) => turnedOut(item) - turnedIn(item),
          text: () =>
            phrase`That is the difference from lock to lock. The share of the caster is in it once for each lock, so one lock has half of it.`,
        },
        {
          id: 'turned-round',
          confuses: 'in and out',
          value: (item) => (turnedIn(item) - turnedOut(item)) / 2,
          text: () =>
            phrase`The size fits, but in and out have changed places: this is the share with the wheel turned in. Turned out the wheel gains camber here.`,
        },
        {
          id: 'from-straight-ahead',
          confuses: 'change from straight ahead',
          value: (item) => turnedOut(item) - ahead(item),
          text: () =>
            phrase`That is the whole change from straight ahead to turned out. The share of the inclination is in it as well. Taking one lock from the other gets rid of that.`,
        },
        {
          id: 'mean',
          confuses: 'mean of the two locks',
          value: (item) => (turnedOut(item) + turnedIn(item)) / 2,
          text: () =>
            phrase`That is the mean of the two locks. In the mean the caster drops out and the inclination stays, the wrong one of the two. Take one lock from the other instead.`,
        },
      ],
      solution: ({ turnedIn_deg, turnedOut_deg }, _earlier, value) =>
        phrase`Out less in is ${deg(turnedOut_deg)} − ${term(deg(turnedIn_deg))} = ${rounded(2 * value, 'deg', 1)}, and half of that is ${rounded(value, 'deg', 2)}.`,
    },
    {
      id: 'from-inclination',
      quantity: QUANTITIES.camberFromInclination,
      unit: 'deg',
      decimals: 2,
      label: 'Camber from the inclination, on the plate',
      value: (item, earlier) => turnedOut(item) - step(earlier, 0) - ahead(item),
      sum: 'exact',
      possible: (value) => Math.abs(value) < si(4, 'deg'),
      hint: () =>
        phrase`From straight ahead to turned out the camber has changed by both shares together. One of them you know.`,
      slips: [
        {
          id: 'straight-left-in',
          confuses: 'camber straight ahead',
          value: (item, earlier) => turnedOut(item) - step(earlier, 0),
          text: () =>
            phrase`That still has the camber straight ahead in it. It would be right for a wheel that stands upright when it runs straight. A share is a change: count from straight ahead.`,
        },
        {
          id: 'both-shares',
          confuses: 'both shares',
          value: (item) => turnedOut(item) - ahead(item),
          text: () =>
            phrase`That is both shares together, what the camber has changed by on the way out. The share of the caster has still to be taken out of it.`,
        },
        {
          id: 'caster-added',
          confuses: 'lock turned in',
          value: (item, earlier) => turnedOut(item) + step(earlier, 0) - ahead(item),
          text: () =>
            phrase`That adds the share of the caster, as one would from the lock turned in. On the lock turned out the caster has already added it, so take it away.`,
        },
        {
          id: 'turned-round',
          confuses: 'old and new',
          value: (item, earlier) => ahead(item) + step(earlier, 0) - turnedOut(item),
          text: () =>
            phrase`The size fits, but old and new have changed places. A change is the new value less the old one, and an axis that leans inboard makes this one outboard.`,
        },
      ],
      solution: ({ turnedOut_deg, ahead_deg }, earlier, value) =>
        phrase`Turned out, less the share of the caster, less the camber straight ahead: ${deg(turnedOut_deg)} − ${term(rounded(step(earlier, 0), 'deg', 2))} − ${term(deg(ahead_deg))} = ${rounded(value, 'deg', 2)}.`,
    },
    {
      id: 'camber',
      quantity: QUANTITIES.camber,
      unit: 'deg',
      decimals: 1,
      label: 'Camber at full lock',
      value: (item, earlier) =>
        ahead(item) +
        step(earlier, 1) * inclinationGrows(item) +
        wayOf(item) * step(earlier, 0) * casterGrows(item),
      hint: () =>
        phrase`Each share grows in its own way from the turn of the plate to full lock: one like the sine, the other like one less the cosine. Then add them to the camber straight ahead.`,
      slips: [
        {
          id: 'other-lock',
          confuses: 'other lock',
          value: (item, earlier) =>
            ahead(item) +
            step(earlier, 1) * inclinationGrows(item) -
            wayOf(item) * step(earlier, 0) * casterGrows(item),
          text: () =>
            phrase`That is the camber at the other lock. The share of the caster was found turned out; turned in it has the other sign.`,
        },
        {
          id: 'in-proportion',
          confuses: 'in proportion',
          value: (item, earlier) =>
            ahead(item) +
            ((step(earlier, 1) + wayOf(item) * step(earlier, 0)) * lock(item)) / turn(item),
          text: () =>
            phrase`That lets both shares grow in proportion to the turn. For the caster this is nearly so. The share of the inclination starts gently and then gains more and more: one less the cosine.`,
        },
        {
          id: 'straight-left-out',
          confuses: 'camber straight ahead',
          value: (item, earlier) =>
            step(earlier, 1) * inclinationGrows(item) +
            wayOf(item) * step(earlier, 0) * casterGrows(item),
          text: () =>
            phrase`That is the change alone. It would be the camber if the camber straight ahead were nought. The wheel had some before it was turned, and the change comes on top.`,
        },
        {
          id: 'on-the-plate',
          confuses: 'turn of the plate',
          value: (item, earlier) => ahead(item) + step(earlier, 1) + wayOf(item) * step(earlier, 0),
          text: () =>
            phrase`That is the camber at the turn of the plate, as it was read there. Full lock goes farther, and both shares go on growing.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`From the plate to full lock the sine grows by the factor ${bare(casterGrows(item), 3)}, one less the cosine by ${bare(inclinationGrows(item), 3)}. So ${deg(item.ahead_deg)} + ${rounded(step(earlier, 1), 'deg', 2)} · ${bare(inclinationGrows(item), 3)} ${item.way === 'out' ? '+' : '−'} ${rounded(step(earlier, 0), 'deg', 2)} · ${bare(casterGrows(item), 3)} = ${rounded(value, 'deg', 1)}: the top of the wheel leans ${sign(value, QUANTITIES.camber)}.`,
    },
  ],
};
