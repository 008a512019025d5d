import { turnsIn } from '#core/fastening/engagement.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { bare, given, mm, phrase, rounded, si } from '../phrase.ts';
import type { BoltPicture } from '../pictures/part-pictures.ts';

interface Item {
  readonly turns: number;
  readonly pitch_mm: number;
  readonly wanted_mm: number;
}

const pitch = ({ pitch_mm }: Item): number => si(pitch_mm, 'mm');
const wanted = ({ wanted_mm }: Item): number => si(wanted_mm, 'mm');
const counted = (item: Item): number => item.turns * pitch(item);

/** The stud in its nut, with a spacer of so many metres under it. */
const onStud = (item: Item, spacer: number): BoltPicture => ({
  scene: 'bolt',
  nut: true,
  length_mm: 1000 * counted(item),
  wheel_mm: 0,
  spacer_mm: 1000 * spacer,
  measures: [],
});

/** From turns counted by hand to the spacer that would use up the thread. */
export const turnsOfANut: Kind<Item> = {
  id: 'turns-of-a-nut',
  version: 1,
  title: 'Count the turns',
  lesson: 'holding-the-wheel-on',
  level: 3,
  draw: (random) => ({
    turns: random.grid(8, 20, 0.5),
    pitch_mm: random.pick([1.5, 1.75, 2]),
    wanted_mm: random.grid(7, 24, 0.5),
  }),
  sound: (item) => {
    const left = 1000 * (counted(item) - wanted(item));
    return left >= 3.6 && left <= 26;
  },
  question: ({ turns, pitch_mm, wanted_mm }) =>
    phrase`Without any spacer a wheel nut is screwed on by hand, and from the first thread that catches until it meets its seat it makes ${String(turns)} turns; the stud then ends inside the nut. The pitch is ${given(pitch_mm, 'mm')}. The maker of the studs asks for ${mm(wanted_mm)} of engagement. How thick could a plain spacer be before the thread falls short?`,
  solved: (item) => ({
    ...onStud(item, counted(item) - wanted(item)),
    measures: [
      {
        of: 'spacer',
        says: `spacer ${rounded(counted(item) - wanted(item), 'mm', 1).figure}`,
      },
      { of: 'engaged', says: mm(item.wanted_mm).figure },
    ],
  }),
  wrong: (item, { part, value, answer }) => {
    if (part !== 'engaged' || Math.abs(value - answer) < 0.001 || value > 0.06) return undefined;
    return {
      ...onStud(item, 0),
      measures: [{ of: 'engaged', says: 'engaged' }],
      wrong_mm: 1000 * value,
    };
  },
  parts: [
    {
      id: 'engaged',
      quantity: OWN_QUANTITIES.engagement,
      unit: 'mm',
      decimals: 1,
      label: 'Thread engagement without a spacer',
      value: counted,
      hint: () => phrase`How far does a nut go along its stud in one whole turn?`,
      slips: [
        {
          id: 'turns-as-millimetres',
          confuses: 'turns for millimetres',
          value: (item) => item.turns / 1000,
          text: () =>
            phrase`That takes the turns for millimetres. It would be right for a pitch of one millimetre. Here each turn makes the way of this thread’s pitch.`,
        },
        {
          id: 'divided',
          confuses: 'dividing by the pitch',
          value: (item) => turnsIn(item.turns / 1000, { diameter: 0, pitch: item.pitch_mm }),
          text: () =>
            phrase`That comes from dividing by the pitch, as on the way from a length to the turns. The turns are known here and the length is asked for: multiply.`,
        },
        {
          id: 'first-turn',
          confuses: 'first turn',
          value: (item) => (item.turns - 1) * pitch(item),
          text: () =>
            phrase`That leaves the first turn out, in which the thread is only just caught. Careful, but the turns were counted from the moment it catches, and the question takes all of them.`,
        },
        {
          id: 'two-starts',
          confuses: 'two starts',
          value: (item) => 2 * counted(item),
          text: () =>
            phrase`That lets the nut go two pitches in a turn, as on a thread with two starts. Wheel studs have one start: one turn, one pitch.`,
        },
      ],
      solution: ({ turns, pitch_mm }, _earlier, value) =>
        phrase`One pitch for each turn: ${bare(turns, 1)} · ${given(pitch_mm, 'mm')} = ${rounded(value, 'mm', 2)}.`,
    },
    {
      id: 'spacer',
      quantity: OWN_QUANTITIES.spacer,
      unit: 'mm',
      decimals: 1,
      label: 'Spacer that leaves just what is asked for',
      value: (item, earlier) => step(earlier, 0) - wanted(item),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`Every millimetre of spacer is a millimetre of thread. How much more is there than has to stay?`,
      slips: [
        {
          id: 'all-of-it',
          confuses: 'whole engagement',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is the whole engagement: with such a spacer the nut would not catch at all. What the maker asks for has to stay.`,
        },
        {
          id: 'added',
          confuses: 'adding what is asked for',
          value: (item, earlier) => step(earlier, 0) + wanted(item),
          text: () =>
            phrase`That comes from adding what is asked for. It would be the length of a longer stud past the seat. Here the stud is what it is, and the spacer has to do with the rest.`,
        },
        {
          id: 'in-turns',
          confuses: 'turns that can go',
          value: (item, earlier) => (step(earlier, 0) - wanted(item)) / (1000 * pitch(item)),
          text: () =>
            phrase`That is the number of turns that can go, read as millimetres. The thickness is a length: the turns times the pitch, or simply the difference of the two lengths.`,
        },
        {
          id: 'what-stays',
          confuses: 'what has to stay',
          value: wanted,
          text: () =>
            phrase`That is what has to stay, not what can go. The spacer may use up the rest: what is there now, less what the maker of the studs asks for.`,
        },
      ],
      solution: ({ wanted_mm }, earlier, value) =>
        phrase`What is there less what has to stay: ${rounded(step(earlier, 0), 'mm', 2)} − ${mm(wanted_mm)} = ${rounded(value, 'mm', 2)}. That is where the arithmetic ends, and no permission: seat, centring, approval and inspection come before any spacer goes on.`,
    },
  ],
};
