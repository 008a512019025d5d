import { expanded } from '#core/uncertainty/linear.ts';
import { measured } from '#core/uncertainty/measurement.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { bare, mm, phrase, rounded, si } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';
import type { Bar } from '../pictures/picture.ts';

interface Item {
  readonly lower_mm: number;
  readonly upper_mm: number;
  readonly rim_mm: number;
  /** In hundredths, so that they are whole. */
  readonly lowerFactor: number;
  readonly upperFactor: number;
}

const lower = ({ lower_mm }: Item): number => si(lower_mm, 'mm');
const upper = ({ upper_mm }: Item): number => si(upper_mm, 'mm');
const rim = ({ rim_mm }: Item): number => measured(0, si(rim_mm, 'mm')).standard;
const lowerFactor = (item: Item): number => item.lowerFactor / 100;
const upperFactor = (item: Item): number => item.upperFactor / 100;
const alone = (factor: number, half: number): number => factor * measured(0, half).standard;
const together = (...parts: readonly number[]): number => expanded(Math.hypot(...parts));

const contributions = (item: Item): readonly Bar[] => [
  { says: 'lower mark', value: alone(lowerFactor(item), lower(item)) },
  { says: 'upper mark', value: alone(upperFactor(item), upper(item)) },
  { says: 'middle of tyre', value: rim(item) },
];

/** Rough readings, and how sure the scrub radius is. */
export const doubtOfScrub: Kind<Item> = {
  id: 'doubt-of-scrub',
  version: 1,
  title: 'Give or take',
  lesson: 'measuring-your-own-car',
  level: 2,
  draw: (random) => ({
    lower_mm: random.integer(8, 24),
    upper_mm: random.integer(20, 60),
    lowerFactor: random.integer(135, 158),
    upperFactor: random.integer(35, 52),
    rim_mm: random.integer(8, 36),
  }),
  sound: (item) => {
    const [a, b] = [alone(lowerFactor(item), lower(item)), alone(upperFactor(item), upper(item))];
    return b >= 0.4 * a && rim(item) >= 0.5 * Math.hypot(a, b);
  },
  question: (item) =>
    phrase`In a hurry, with a folding rule and by eye, somebody marks the pivots of a truck on the floor: the lower one certainly within ± ${mm(item.lower_mm)}, the upper one certainly within ± ${mm(item.upper_mm)}, and the middle of the tyre within ± ${mm(item.rim_mm)}, with anything in between as likely. The scrub radius moves by ${String(lowerFactor(item))} times what the lower mark is off, and by ${String(upperFactor(item))} times what the upper one is, and by just as much as the middle of the tyre is. All else is sharp. Within which ± is the scrub radius known, in about nineteen cases of twenty?`,
  solved: (item) => ({
    scene: 'bars',
    title: 'What each reading does to the scrub radius, and all together',
    bars: [
      ...contributions(item),
      { says: '± in all', value: together(...contributions(item).map(({ value }) => value)) },
    ],
  }),
  wrong: (item, road) => {
    const asked = { says: road.part === 'both' ? '± in all' : 'asked', value: road.answer };
    return wrongBar(
      'What each reading does to the scrub radius',
      road.part === 'both'
        ? [
            ...contributions(item).map((bar, i) => ({
              ...bar,
              value: road.earlier[i] ?? bar.value,
            })),
            asked,
          ]
        : [asked],
      road,
    );
  },
  parts: [
    {
      id: 'from-lower',
      quantity: OWN_QUANTITIES.contribution,
      unit: 'mm',
      decimals: 1,
      label: 'What the lower mark’s standard uncertainty does to the scrub radius',
      value: (item) => alone(lowerFactor(item), lower(item)),
      hint: () =>
        phrase`First from the ± to the standard uncertainty: over the square root of three. Then times how much it moves the result.`,
      slips: contributionSlips(lower, lowerFactor),
      solution: (item, _earlier, value) =>
        phrase`± over √3, times the factor: ${mm(item.lower_mm)} ÷ ${bare(Math.sqrt(3), 4)} · ${bare(lowerFactor(item), 2)} = ${rounded(value, 'mm', 2)}.`,
    },
    {
      id: 'from-upper',
      quantity: OWN_QUANTITIES.contribution,
      unit: 'mm',
      decimals: 1,
      label: 'What the upper mark’s standard uncertainty does to the scrub radius',
      value: (item) => alone(upperFactor(item), upper(item)),
      hint: () => phrase`The same again, with the upper mark’s own ± and its own factor.`,
      slips: contributionSlips(upper, upperFactor),
      solution: (item, _earlier, value) =>
        phrase`The same for the upper mark: ${mm(item.upper_mm)} ÷ ${bare(Math.sqrt(3), 4)} · ${bare(upperFactor(item), 2)} = ${rounded(value, 'mm', 2)}.`,
    },
    {
      id: 'both',
      quantity: OWN_QUANTITIES.expanded,
      unit: 'mm',
      decimals: 1,
      label: '± of the scrub radius',
      value: (item, earlier) => together(step(earlier, 0), step(earlier, 1), rim(item)),
      hint: () =>
        phrase`The middle of the tyre has a standard uncertainty too, and moves the result by just as much. Square all three, add, take the root; then double it for nineteen cases of twenty.`,
      slips: [
        {
          id: 'added',
          confuses: 'the worst at once',
          value: (item, earlier) => 2 * (step(earlier, 0) + step(earlier, 1) + rim(item)),
          text: () =>
            phrase`That adds the three, as if the worst at once were the rule: all off as far as can be, and in the same direction. Independent readings rarely do that; their squares are added.`,
        },
        {
          id: 'not-doubled',
          confuses: 'standard uncertainty',
          value: (item, earlier) => together(step(earlier, 0), step(earlier, 1), rim(item)) / 2,
          text: () =>
            phrase`That is the standard uncertainty of the scrub radius. It holds in about two cases of three; for nineteen of twenty it has to be doubled.`,
        },
        {
          id: 'tyre-forgotten',
          confuses: 'middle of the tyre',
          value: (_item, earlier) => together(step(earlier, 0), step(earlier, 1)),
          text: () =>
            phrase`That leaves the middle of the tyre out. It moves the scrub radius by just as much as it is off, so its own standard uncertainty belongs under the root as well.`,
        },
        {
          id: 'tripled',
          confuses: 'three standard uncertainties',
          value: (item, earlier) => 1.5 * together(step(earlier, 0), step(earlier, 1), rim(item)),
          text: () =>
            phrase`That takes three standard uncertainties, which hold in nearly every case. For nineteen of twenty, two of them are enough.`,
        },
      ],
      solution: (item, earlier, value) => {
        const [a, b] = [step(earlier, 0), step(earlier, 1)];
        return phrase`The middle of the tyre: ${mm(item.rim_mm)} ÷ ${bare(Math.sqrt(3), 4)} = ${rounded(rim(item), 'mm', 2)}. The squares add up: ${rounded(a, 'mm', 2)}, ${rounded(b, 'mm', 2)} and ${rounded(rim(item), 'mm', 2)}, each squared, have the root ${rounded(value / 2, 'mm', 2)}. Doubled: ${bare(2, 0)} · ${rounded(value / 2, 'mm', 2)} = ${rounded(value, 'mm', 1)}.`;
      },
    },
  ],
};

/** The wrong roads from a ± to what it does to the result. */
function contributionSlips(half: (item: Item) => number, factor: (item: Item) => number) {
  return [
    {
      id: 'not-divided',
      confuses: '± for the standard uncertainty',
      value: (item: Item) => factor(item) * half(item),
      text: () =>
        phrase`That takes the ± for the standard uncertainty. It would be right if the reading were as good as always at one of the two ends. With anything in between as likely, divide by the root of three.`,
    },
    {
      id: 'no-factor',
      confuses: 'mark for the result',
      value: (item: Item) => half(item) / Math.sqrt(3),
      text: () =>
        phrase`That takes the mark for the result, as if the scrub radius moved by just as much. Between the marks and the floor lies a lever: the factor is missing.`,
    },
    {
      id: 'factor-divided',
      confuses: 'dividing by the factor',
      value: (item: Item) => half(item) / Math.sqrt(3) / factor(item),
      text: () =>
        phrase`That comes from dividing by the factor, as on the way from the result back to the mark. The result moves by the factor times what the mark is off: multiply.`,
    },
    {
      id: 'factor-twice',
      confuses: 'factor used twice',
      value: (item: Item) => (factor(item) ** 2 * half(item)) / Math.sqrt(3),
      text: () =>
        phrase`That has the factor used twice. It stands between the mark and the result once; what is squared later is the whole contribution, not the factor alone.`,
    },
  ];
}
