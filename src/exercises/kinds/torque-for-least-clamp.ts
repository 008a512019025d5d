import { torqueForClamp } from '#core/fastening/clamp-load.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { bare, given, mm, phrase, rounded, si } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';

interface Item {
  readonly least_kN: number;
  readonly scatter: number;
  readonly nutFactor: number;
  readonly thread_mm: number;
}

const least = ({ least_kN }: Item): number => si(least_kN, 'kN');
const thread = ({ thread_mm }: Item) => ({ diameter: si(thread_mm, 'mm') });
const middle = (item: Item): number => (least(item) * (1 + item.scatter)) / 2;
const torque = (item: Item, clamp: number): number =>
  torqueForClamp(clamp, item.nutFactor, thread(item));

/** Backwards from the clamp load that the weakest fastener has to have to the torque. */
export const torqueForLeastClamp: Kind<Item> = {
  id: 'torque-for-least-clamp',
  version: 1,
  title: 'A torque for the weakest bolt',
  lesson: 'holding-the-wheel-on',
  level: 3,
  draw: (random) => ({
    least_kN: random.grid(18, 45, 0.5),
    scatter: random.pick([1.4, 1.6, 2.5]),
    nutFactor: random.integer(14, 24) / 100,
    thread_mm: random.pick([12, 14, 18]),
  }),
  sound: (item) => torque(item, middle(item)) >= 40 && torque(item, middle(item)) <= 260,
  question: ({ least_kN, scatter, nutFactor, thread_mm }) =>
    phrase`For a trailer that your class designs, even the weakest wheel bolt has to clamp with ${given(least_kN, 'kN')}. With the tool at hand the best of many bolts has ${String(scatter)} times the clamp load of the worst. The thread is ${mm(thread_mm)} in diameter and the nut factor ${String(nutFactor)}. Which torque has to stand in the instructions?`,
  picture: (item) => ({
    scene: 'bars',
    title: 'Clamp load of the weakest bolt and of the best',
    bars: [
      { says: given(item.least_kN, 'kN').figure, value: least(item) },
      { says: 'best', value: item.scatter * least(item) },
    ],
  }),
  wrong: (item, road) =>
    road.part === 'middle'
      ? wrongBar(
          'Clamp load of the weakest bolt, in the middle, and of the best',
          [
            { says: 'weakest', value: least(item) },
            { says: 'middle', value: road.answer },
            { says: 'best', value: item.scatter * least(item) },
          ],
          road,
        )
      : undefined,
  parts: [
    {
      id: 'middle',
      quantity: QUANTITIES.clampLoad,
      unit: 'kN',
      decimals: 1,
      label: 'Clamp load in the middle of many bolts',
      value: middle,
      hint: () =>
        phrase`You know the weakest. How much is the strongest, and what lies halfway between the two?`,
      slips: [
        {
          id: 'strongest',
          confuses: 'strongest bolt',
          value: (item) => least(item) * item.scatter,
          text: () =>
            phrase`That is the strongest bolt. A torque is set for the middle, and half of all bolts come out above it; the strongest is only to be checked against the bolt’s own strength.`,
        },
        {
          id: 'weakest',
          confuses: 'weakest bolt',
          value: least,
          text: () =>
            phrase`That sets the middle to what the weakest bolt has to have. Then half of all bolts would have less than they need.`,
        },
        {
          id: 'backwards',
          confuses: 'way from the middle to the weakest',
          value: (item) => (2 * least(item)) / (1 + item.scatter),
          text: () =>
            phrase`That goes the way from the middle to the weakest, and here it has to be gone the other way: the middle is more than the weakest.`,
        },
        {
          id: 'whole-sum',
          confuses: 'weakest and strongest together',
          value: (item) => least(item) * (1 + item.scatter),
          text: () =>
            phrase`That is the weakest and strongest together. Their mean is the middle: half of the sum.`,
        },
      ],
      solution: ({ least_kN, scatter }, _earlier, value) =>
        phrase`Halfway between the weakest and the strongest: ${given(least_kN, 'kN')} · ${bare(1 + scatter, 1)} ÷ ${bare(2, 0)} = ${rounded(value, 'kN', 2)}.`,
    },
    {
      id: 'torque',
      quantity: QUANTITIES.tighteningTorque,
      unit: 'Nm',
      decimals: 0,
      label: 'Tightening torque',
      value: (item, earlier) => torque(item, step(earlier, 0)),
      hint: () =>
        phrase`The rule backwards: nut factor times diameter times clamp load, in metres and newtons.`,
      slips: [
        {
          id: 'no-nut-factor',
          confuses: 'nut factor',
          value: (item, earlier) => torque(item, step(earlier, 0)) / item.nutFactor,
          text: () =>
            phrase`That leaves the nut factor out. Clamp load times diameter would be the torque if the bolt were pulled round at its rim by the whole clamp load; friction and the wedge of the thread make it a fifth or so of that.`,
        },
        {
          id: 'radius',
          confuses: 'radius of the thread',
          value: (item, earlier) => torque(item, step(earlier, 0)) / 2,
          text: () =>
            phrase`That takes the radius of the thread. The nut factor goes with the whole diameter: all halves are in it already.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item, earlier) => 1000 * torque(item, step(earlier, 0)),
          text: () =>
            phrase`That has millimetres in it: the result is in newton millimetres. Turn the diameter of the thread into metres.`,
        },
        {
          id: 'for-the-weakest',
          confuses: 'clamp load of the weakest',
          value: (item) => torque(item, least(item)),
          text: () =>
            phrase`That takes the clamp load of the weakest bolt for the middle. With such a torque half of all bolts would have less than they need.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Nut factor times diameter times clamp load: ${String(item.nutFactor)} · ${given(item.thread_mm / 1000, 'm')} · ${rounded(step(earlier, 0), 'N', 0)} = ${rounded(value, 'Nm', 1)}. The strongest bolt would clamp with ${rounded(least(item) * item.scatter, 'kN', 1)}, and has to stand it.`,
    },
  ],
};
