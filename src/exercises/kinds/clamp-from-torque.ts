import { QUANTITIES } from '#core/quantities.ts';
import { clampLoad, clampRange } from '#core/fastening/clamp-load.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { bare, given, mm, phrase, rounded, si } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';

interface Item {
  readonly torque_Nm: number;
  readonly thread_mm: number;
  readonly nutFactor: number;
  readonly scatter: number;
  readonly count: number;
}

const COUNT_WORDS: Readonly<Record<number, string>> = { 4: 'four', 5: 'five', 6: 'six' };

const torque = ({ torque_Nm }: Item): number => si(torque_Nm, 'Nm');
const diameter = ({ thread_mm }: Item): number => si(thread_mm, 'mm');
const middle = (item: Item): number =>
  clampLoad(torque(item), item.nutFactor, { diameter: diameter(item) });

/** From a tightening torque to the clamp load, and to the one of the weakest fastener. */
export const clampFromTorque: Kind<Item> = {
  id: 'clamp-from-torque',
  version: 1,
  title: 'What a torque clamps with',
  lesson: 'holding-the-wheel-on',
  level: 2,
  draw: (random) => ({
    torque_Nm: random.integer(80, 200),
    thread_mm: random.pick([12, 14, 18]),
    nutFactor: random.integer(14, 24) / 100,
    scatter: random.pick([1.3, 1.4, 1.5, 1.6, 1.8, 2, 2.5, 3]),
    count: random.pick([4, 5, 6]),
  }),
  sound: (item) => middle(item) > 25_000 && middle(item) < 75_000,
  question: ({ torque_Nm, thread_mm, nutFactor, scatter, count }) =>
    phrase`The ${COUNT_WORDS[count] ?? ''} nuts of a wheel, on studs with a thread of ${mm(thread_mm)}, are tightened to ${given(torque_Nm, 'Nm')}. The nut factor is taken as ${String(nutFactor)}, and of nuts tightened in this way the best has ${String(scatter)} times the clamp load of the worst. How hard does a nut clamp in the middle of many, how hard at least, and on how much squeeze of the whole wheel can you count?`,
  solved: (item) => {
    const { least, most } = clampRange(middle(item), item.scatter);
    return {
      scene: 'bars',
      title: 'Clamp loads of one nut',
      bars: [
        { says: `weakest ${rounded(least, 'kN', 1).figure}`, value: least },
        { says: `middle ${rounded(middle(item), 'kN', 1).figure}`, value: middle(item) },
        { says: `best ${rounded(most, 'kN', 1).figure}`, value: most },
      ],
    };
  },
  wrong: (_item, road) => {
    const says = { middle: 'middle', least: 'weakest', together: 'together' }[road.part];
    const earlier = road.earlier.slice(0, 1).map((value) => ({ says: 'middle', value }));
    const asked = { says: says ?? '', value: road.answer };
    return wrongBar('Clamp loads', [...earlier, asked], road);
  },
  parts: [
    {
      id: 'middle',
      quantity: QUANTITIES.clampLoad,
      unit: 'kN',
      decimals: 1,
      label: 'Clamp load in the middle',
      value: middle,
      hint: () =>
        phrase`Torque over nut factor and diameter, with the diameter in metres; then a thousand newtons make a kilonewton.`,
      slips: [
        {
          id: 'no-nut-factor',
          confuses: 'nut factor',
          value: (item) => torque(item) / diameter(item),
          text: () =>
            phrase`That leaves the nut factor out. It would be right for a torque that pushes at the rim of the thread and no more. The nut factor is below one because the thread is a wedge: a small push becomes a large squeeze.`,
        },
        {
          id: 'radius',
          confuses: 'radius of the thread',
          value: (item) => 2 * middle(item),
          text: () =>
            phrase`That divides by the radius of the thread. The nut factor is made for the whole diameter: all halves are in it already.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item) => middle(item) / 1000,
          text: () =>
            phrase`That has millimetres in it. Newton metres over millimetres give something a thousand times too small: turn the diameter into metres first.`,
        },
        {
          id: 'full-turn',
          confuses: 'work of a turn',
          value: (item) => 2 * Math.PI * middle(item),
          text: () =>
            phrase`That multiplies by a full circle, as for the work of a turn without friction, where the pitch stands below. With nut factor and diameter the circle has no place.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Torque over nut factor and diameter: ${given(item.torque_Nm, 'Nm')} ÷ ${String(item.nutFactor)} ÷ ${given(item.thread_mm / 1000, 'm')} = ${rounded(value, 'N', 1)}, or ${rounded(value, 'kN', 1)}.`,
    },
    {
      id: 'least',
      quantity: OWN_QUANTITIES.leastClamp,
      unit: 'kN',
      decimals: 1,
      label: 'Clamp load of the weakest nut',
      value: (item, earlier) => clampRange(step(earlier, 0), item.scatter).least,
      hint: () =>
        phrase`The weakest is one part, the strongest as many parts as the scatter says. Their mean is the middle that you have. How much is one part?`,
      slips: [
        {
          id: 'divided',
          confuses: 'middle for the strongest',
          value: (item, earlier) => step(earlier, 0) / item.scatter,
          text: () =>
            phrase`That takes the middle for the strongest: divided by the scatter it would give the weakest. But the scatter is from the weakest to the strongest, and the middle lies halfway.`,
        },
        {
          id: 'strongest',
          confuses: 'strongest nut',
          value: (item, earlier) => clampRange(step(earlier, 0), item.scatter).most,
          text: () =>
            phrase`That is the strongest nut. It matters for the strength of the stud. A wheel is held by the weakest ones, and those are asked for.`,
        },
        {
          id: 'middle',
          confuses: 'middle',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is still the middle. Half of all nuts have less than that, and the question is by how much the worst of them.`,
        },
        {
          id: 'taken-away',
          confuses: 'a share on top',
          value: (item, earlier) => step(earlier, 0) * (2 - item.scatter),
          text: () =>
            phrase`That reads the scatter as a share on top of the middle and takes the same share off. The scatter is a ratio between the ends: the weakest and the strongest together make twice the middle.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Weakest and strongest together are twice the middle, and ${bare(1 + item.scatter, 1)} parts: ${bare(2, 0)} · ${rounded(step(earlier, 0), 'kN', 3)} ÷ ${bare(1 + item.scatter, 1)} = ${rounded(value, 'kN', 2)}.`,
    },
    {
      id: 'together',
      quantity: OWN_QUANTITIES.leastTogether,
      unit: 'kN',
      decimals: 0,
      label: 'Squeeze of all nuts together, if each is the weakest',
      value: (item, earlier) => item.count * step(earlier, 1),
      hint: () => phrase`Each nut squeezes for itself, and the faces feel them all.`,
      slips: [
        {
          id: 'one-alone',
          confuses: 'one nut for all',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That takes one nut for all. Each of them pulls the wheel against the hub with a clamp load of its own, side by side, so they add up.`,
        },
        {
          id: 'of-the-middle',
          confuses: 'middle instead of the weakest',
          value: (item, earlier) => item.count * step(earlier, 0),
          text: () =>
            phrase`That takes the middle instead of the weakest. It is what one may expect; what one can count on has to be reckoned with the weakest.`,
        },
        {
          id: 'shared',
          confuses: 'sharing',
          value: (item, earlier) => step(earlier, 1) / item.count,
          text: () =>
            phrase`That comes from sharing one clamp load among the nuts. It would be right if the whole squeeze were given. Here the clamp load of one nut is, and each has as much.`,
        },
        {
          id: 'one-short',
          confuses: 'one nut too few',
          value: (item, earlier) => (item.count - 1) * step(earlier, 1),
          text: () =>
            phrase`That counts one nut too few, as for a wheel that has lost one. It is worth knowing what that would leave, but the question is about all of them.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`As many times the weakest: ${bare(item.count, 0)} · ${rounded(step(earlier, 1), 'kN', 3)} = ${rounded(value, 'kN', 1)}.`,
    },
  ],
};
