import { engagement } from '#core/fastening/engagement.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { mm, phrase, rounded, si, sign } from '../phrase.ts';
import type { BoltPicture } from '../pictures/part-pictures.ts';

interface Item {
  readonly length_mm: number;
  readonly wheel_mm: number;
  readonly spacer_mm: number;
  readonly thread_mm: number;
}

const length = ({ length_mm }: Item): number => si(length_mm, 'mm');
const wheel = ({ wheel_mm }: Item): number => si(wheel_mm, 'mm');
const spacer = ({ spacer_mm }: Item): number => si(spacer_mm, 'mm');
const diameter = ({ thread_mm }: Item): number => si(thread_mm, 'mm');
/** A hole that is threaded all the way takes whatever reaches it. */
const DEEP = 1;

const bolted = ({ length_mm, wheel_mm }: Item, spacer_mm: number): BoltPicture => ({
  scene: 'bolt',
  ...{ length_mm, wheel_mm, spacer_mm, measures: [] },
});

/** What a plain spacer leaves of a bolt’s thread. */
export const threadBehindSpacer: Kind<Item> = {
  id: 'thread-behind-spacer',
  version: 1,
  title: 'Thread left behind a spacer',
  lesson: 'holding-the-wheel-on',
  level: 1,
  draw: (random) => ({
    length_mm: random.integer(24, 40),
    wheel_mm: random.grid(7, 14, 0.5),
    spacer_mm: random.integer(3, 15),
    thread_mm: random.pick([10, 12, 14, 16]),
  }),
  sound: ({ length_mm, wheel_mm, spacer_mm, thread_mm }) => {
    const bare = length_mm - wheel_mm;
    return bare >= 0.9 * thread_mm && bare <= 26 && bare - spacer_mm >= 2;
  },
  question: ({ length_mm, wheel_mm, spacer_mm, thread_mm }) =>
    phrase`A wheel bolt measures ${mm(length_mm)} from its seat to the end of its thread, and the wheel is ${mm(wheel_mm)} thick under the seat. The thread is ${mm(thread_mm)} in diameter, and the hub is threaded deep enough. A customer brings a plain spacer of ${mm(spacer_mm)} and wants to keep the bolts. How much thread is left, and how does that stand to one diameter?`,
  picture: (item) => ({
    ...bolted(item, 0),
    measures: [
      { of: 'length', says: mm(item.length_mm).figure },
      { of: 'wheel', says: mm(item.wheel_mm).figure },
    ],
  }),
  solved: (item) => ({
    ...bolted(item, item.spacer_mm),
    measures: [
      {
        of: 'engaged',
        says: `engaged ${rounded(length(item) - wheel(item) - spacer(item), 'mm', 1).figure}`,
      },
      { of: 'thread', says: `one diameter ${mm(item.thread_mm).figure}`, long_mm: item.thread_mm },
      { of: 'spacer', says: mm(item.spacer_mm).figure },
    ],
  }),
  wrong: (item, { part, value, answer, earlier }) => {
    if (part === 'spare' || value <= 0 || Math.abs(value - answer) < 0.001 || value > 0.06)
      return undefined;
    return {
      ...(part === 'bare'
        ? bolted(item, 0)
        : // Of a bolt with so much bare thread.
          bolted({ ...item, length_mm: 1000 * step(earlier, 0) + item.wheel_mm }, item.spacer_mm)),
      measures: [{ of: 'engaged', says: 'engaged' }],
      wrong_mm: 1000 * value,
    };
  },
  parts: [
    {
      id: 'bare',
      quantity: OWN_QUANTITIES.reach,
      unit: 'mm',
      decimals: 1,
      label: 'Thread in the hub without the spacer',
      value: (item) => engagement({ reach: length(item) - wheel(item), depth: DEEP }, 0),
      sum: 'exact',
      hint: () =>
        phrase`Begin at the seat and go inboard along the bolt. What does it pass before it gets to the hub?`,
      slips: [
        {
          id: 'wheel-forgotten',
          confuses: 'thickness of the wheel',
          value: length,
          text: () =>
            phrase`That is the whole bolt. It would be right without a wheel in between. The thickness of the wheel lies between seat and hub, and that much of the bolt never gets there.`,
        },
        {
          id: 'added',
          confuses: 'adding the wheel',
          value: (item) => length(item) + wheel(item),
          text: () =>
            phrase`That comes from adding the wheel. It would be right for the length of bolt to buy, from the thread that is wanted. Here the bolt is given and the wheel uses up a part of it.`,
        },
        {
          id: 'half-wheel',
          confuses: 'half of the wheel',
          value: (item) => length(item) - wheel(item) / 2,
          text: () =>
            phrase`That takes off half of the wheel only, as if the bolt began in its middle. The thickness is counted from the seat to the hub face, all of it.`,
        },
        {
          id: 'diameter-off',
          confuses: 'diameter of the thread',
          value: (item) => length(item) - wheel(item) - diameter(item),
          text: () =>
            phrase`That takes off the diameter of the thread as well. The diameter is what the result will be held against at the end; it is no part of the bolt’s way.`,
        },
      ],
      solution: ({ length_mm, wheel_mm }, _earlier, value) =>
        phrase`From seat to hub face the bolt passes the wheel: ${mm(length_mm)} − ${mm(wheel_mm)} = ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'left',
      quantity: OWN_QUANTITIES.engagement,
      unit: 'mm',
      decimals: 1,
      label: 'Thread engagement with the spacer',
      value: (item, earlier) => step(earlier, 0) - spacer(item),
      sum: 'exact',
      possible: (value) => value > 0,
      hint: () =>
        phrase`The spacer carries wheel and bolt head outboard; the hub stays. By how much does the bolt’s end come out?`,
      slips: [
        {
          id: 'unchanged',
          confuses: 'a spacer that changes nothing',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is a spacer that changes nothing. It would be so with bolts that are longer by as much. The customer keeps the bolts, so their ends come out of the hub with the wheel.`,
        },
        {
          id: 'twice',
          confuses: 'spacer on both sides',
          value: (item, earlier) => step(earlier, 0) - 2 * spacer(item),
          text: () =>
            phrase`That takes the spacer off twice, as for a spacer on both sides of the car and the track between them. In one bolt’s way there is one spacer.`,
        },
        {
          id: 'added',
          confuses: 'direction of the bolt',
          value: (item, earlier) => step(earlier, 0) + spacer(item),
          text: () =>
            phrase`That has the direction of the bolt turned round: as if a spacer pushed it farther in. The wheel goes outboard, the head with it, and the end comes out.`,
        },
        {
          id: 'half',
          confuses: 'half of the spacer',
          value: (item, earlier) => step(earlier, 0) - spacer(item) / 2,
          text: () =>
            phrase`That takes off half of the spacer. All of its thickness lies between hub and wheel, so all of it is missing at the end of the thread.`,
        },
      ],
      solution: ({ spacer_mm }, earlier, value) =>
        phrase`The whole spacer is missing at the end: ${rounded(step(earlier, 0), 'mm', 1)} − ${mm(spacer_mm)} = ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'spare',
      quantity: OWN_QUANTITIES.threadSpare,
      unit: 'mm',
      decimals: 1,
      label: 'Against one diameter',
      value: (item, earlier) => step(earlier, 1) - diameter(item),
      sum: 'exact',
      hint: () =>
        phrase`Handbooks ask for one diameter of thread in steel. Take that away from what is left; what does a minus mean here?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'short and to spare',
          value: (item, earlier) => diameter(item) - step(earlier, 1),
          text: () =>
            phrase`The size fits, but short and to spare have changed places. What is there, less what is asked for, is positive only where more is there.`,
        },
        {
          id: 'without-spacer',
          confuses: 'thread without the spacer',
          value: (item, earlier) => step(earlier, 0) - diameter(item),
          text: () =>
            phrase`That holds the thread without the spacer against one diameter. It is how the car stood before. What counts is what the bolt has left with the spacer under the wheel.`,
        },
        {
          id: 'radius',
          confuses: 'radius of the thread',
          value: (item, earlier) => step(earlier, 1) - diameter(item) / 2,
          text: () =>
            phrase`That asks for the radius of the thread only. The rule of the handbooks is one whole diameter in steel, and more in soft metals.`,
        },
        {
          id: 'soft-metal',
          confuses: 'soft metals',
          value: (item, earlier) => step(earlier, 1) - 1.5 * diameter(item),
          text: () =>
            phrase`That asks for one and a half diameters, as handbooks do for soft metals. In a steel hub the question is about one diameter.`,
        },
      ],
      solution: ({ thread_mm }, earlier, value) =>
        phrase`What is there less what is asked for: ${rounded(step(earlier, 1), 'mm', 1)} − ${mm(thread_mm)} = ${rounded(value, 'mm', 1)}, ${sign(value, OWN_QUANTITIES.threadSpare)}. ${value < 0 ? 'With these bolts that spacer is out of the question.' : 'That answers one question of many; seat, centring, approval and the maker’s own rule are others, and a licensed workshop has to look at it.'}`,
    },
  ],
};
