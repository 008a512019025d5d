import { changed, NO_CHANGE, wheelShift } from '#core/change.ts';
import { contactCentre } from '#core/corner.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import type { Rim, WheelPicture } from '../pictures/part-pictures.ts';
import { toldMark, wrongPlace } from '../pictures/wheel-pictures.ts';

interface Item {
  readonly oldInset_mm: number;
  readonly newInset_mm: number;
  readonly spacer_mm: number;
  /** Out from the middle of the car. */
  readonly contact_mm: number;
}

const spacer = ({ spacer_mm }: Item): number => si(spacer_mm, 'mm');
const moreInset = ({ oldInset_mm, newInset_mm }: Item): number =>
  si(newInset_mm - oldInset_mm, 'mm');
const contact = ({ contact_mm }: Item): number => si(contact_mm, 'mm');

/** How far a corner's contact centre goes out when its wheel does, in metres. */
const contactMoved = (wheel: number): number => {
  const corner = cornerAtRoad({});
  const moved = changed(corner, { ...NO_CHANGE, spacer: wheel });
  return contactCentre(moved).y - contactCentre(corner).y;
};

/** Some rim: nobody asks how wide it is. */
const rimAt = (middle_mm: number): Rim => ({ middle_mm, width_mm: 178 });

const after = (item: Item, middle_mm = item.spacer_mm - item.newInset_mm): WheelPicture => ({
  scene: 'wheel',
  before: rimAt(-item.oldInset_mm),
  wheel: rimAt(middle_mm),
  spacer_mm: item.spacer_mm,
  measures: [],
});

/** Spacer and inset are the same movement with opposite signs. */
export const spacerAndInset: Kind<Item> = {
  id: 'spacer-and-inset',
  version: 1,
  title: 'Other wheels, and a spacer',
  lesson: 'spacers-and-inset',
  level: 1,
  draw: (random) => {
    const oldInset_mm = random.integer(20, 55);
    return {
      oldInset_mm,
      newInset_mm: oldInset_mm + random.pick([-1, 1]) * random.integer(5, 30),
      spacer_mm: random.integer(5, 25),
      contact_mm: random.integer(700, 830),
    };
  },
  sound: ({ newInset_mm }) => newInset_mm >= 5 && newInset_mm <= 65,
  pattern: ({ oldInset_mm, newInset_mm }) => (newInset_mm > oldInset_mm ? 'more' : 'less'),
  question: ({ oldInset_mm, newInset_mm, spacer_mm, contact_mm }) =>
    phrase`On wheels of ${mm(oldInset_mm)} inset a car’s contact centres are ${mm(contact_mm)} out from its middle. Its owner has found wheels of ${mm(newInset_mm)} inset, for the same tyres, and puts a spacer ${mm(spacer_mm)} thick behind each of them. All wheels stand upright.`,
  picture: (item) => ({
    scene: 'wheel',
    wheel: rimAt(-item.oldInset_mm),
    measures: [{ of: 'inset', says: mm(item.oldInset_mm).figure }],
  }),
  solved: (item) => ({
    ...after(item),
    measures: [
      toldMark('move', 'movement', spacer(item) - moreInset(item)),
      { of: 'spacer', says: mm(item.spacer_mm).figure },
    ],
  }),
  wrong: (item, road) => {
    const at_mm = (value: number): number =>
      1000 * (road.part === 'contact' ? value - contact(item) : value) - item.oldInset_mm;
    return wrongPlace(
      { ...after(item, at_mm(road.answer)), measures: [{ of: 'move', says: 'movement' }] },
      { road, at_mm, from_mm: -item.oldInset_mm, rim: rimAt(0) },
    );
  },
  parts: [
    {
      id: 'wheel-move',
      quantity: OWN_QUANTITIES.wheelMove,
      unit: 'mm',
      decimals: 0,
      label: 'Movement of each wheel, both changes together',
      value: (item) => wheelShift({ spacer: spacer(item), inset: moreInset(item) }),
      sum: 'exact',
      hint: () =>
        phrase`One change at a time: which way does a spacer take the wheel, and which way does more inset take it?`,
      slips: [
        {
          id: 'inset-turned-round',
          confuses: 'direction of inset',
          value: (item) => spacer(item) + moreInset(item),
          text: () =>
            phrase`That has the direction of inset turned round, as if more of it took the wheel outboard as a spacer does. More inset draws the wheel inboard, less lets it come outboard.`,
        },
        {
          id: 'spacer-alone',
          confuses: 'spacer alone',
          value: spacer,
          text: () =>
            phrase`That is the spacer alone, as if it went behind the old wheels. The new ones sit elsewhere on the hub already: their change of inset belongs to it.`,
        },
        {
          id: 'inset-alone',
          confuses: 'inset alone',
          value: (item) => -moreInset(item),
          text: () =>
            phrase`That is the change of inset alone, as without a spacer. The spacer carries the new wheels outboard by its thickness besides.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item) => moreInset(item) - spacer(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. A spacer carries the wheel outboard, and so does a wheel of less inset.`,
        },
      ],
      solution: ({ oldInset_mm, newInset_mm, spacer_mm }, _earlier, value) =>
        phrase`Old inset less new, and the spacer on top: ${mm(oldInset_mm)} − ${mm(newInset_mm)} + ${mm(spacer_mm)} = ${rounded(value, 'mm', 0)}. Each wheel moves ${sign(value, OWN_QUANTITIES.wheelMove)}.`,
    },
    {
      id: 'contact',
      quantity: OWN_QUANTITIES.contactOut,
      unit: 'mm',
      decimals: 0,
      label: 'Distance of the contact centre from the middle of the car, afterwards',
      value: (item, earlier) => contact(item) + contactMoved(step(earlier, 0)),
      sum: 'exact',
      hint: () =>
        phrase`The contact centre stands below the middle of the wheel and goes where that goes.`,
      slips: [
        {
          id: 'track',
          confuses: 'track',
          value: (item, earlier) => contact(item) + 2 * step(earlier, 0),
          text: () =>
            phrase`That counts the movement twice, as for the track, which has a wheel at either end. From the middle of the car to one contact centre it comes in once.`,
        },
        {
          id: 'wrong-way',
          confuses: 'narrower and wider',
          value: (item, earlier) => contact(item) - step(earlier, 0),
          text: () =>
            phrase`The amount fits, but narrower and wider have changed places. Wheels that move outboard stand farther from the middle of the car, wheels that move inboard nearer to it.`,
        },
        {
          id: 'unchanged',
          confuses: 'car without the change',
          value: contact,
          text: () =>
            phrase`That is the car without the change. It would stay so if only the tyres were changed: with the middle of the wheel the contact centre has moved.`,
        },
        {
          id: 'halved',
          confuses: 'half of the movement',
          value: (item, earlier) => contact(item) + step(earlier, 0) / 2,
          text: () =>
            phrase`That takes half of the movement. A wider rim shares what it gains between its two sides; spacer and inset move the whole wheel.`,
        },
      ],
      solution: ({ contact_mm }, earlier, value) =>
        phrase`${mm(contact_mm)} + ${term(rounded(step(earlier, 0), 'mm', 0))} = ${rounded(value, 'mm', 0)}. The other wheel does the same, so the track changes by twice the movement. Many authorities limit by how much a track may grow: ask before you buy.`,
    },
  ],
};
