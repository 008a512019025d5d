import { step, type Kind } from '../kind.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { bare, directed, mm, phrase, rounded, si } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';

interface Item {
  readonly scrub_mm: number;
  readonly others_mm: number;
  /** In hundredths, so that it is whole. */
  readonly factor: number;
}

const scrub = ({ scrub_mm }: Item): number => si(Math.abs(scrub_mm), 'mm');
const others = ({ others_mm }: Item): number => si(others_mm, 'mm');
const factor = (item: Item): number => item.factor / 100;
const rest = (item: Item, whole: number): number => Math.sqrt(whole ** 2 - others(item) ** 2);
const halfWidth = (item: Item, contribution: number): number =>
  (contribution * Math.sqrt(3)) / factor(item);

/** Backwards from a sign that has to be known to the care that one reading needs. */
export const readingForAKnownSign: Kind<Item> = {
  id: 'reading-for-a-known-sign',
  version: 1,
  title: 'How sharp a mark has to be',
  lesson: 'measuring-your-own-car',
  level: 3,
  draw: (random) => ({
    scrub_mm: random.pick([-1, 1]) * random.integer(22, 60),
    others_mm: random.grid(6, 20, 0.5),
    factor: random.integer(120, 170),
  }),
  sound: (item) => others(item) >= 0.22 * scrub(item) && others(item) <= 0.43 * scrub(item),
  question: (item) =>
    phrase`Rough readings on a truck give a scrub radius of ${directed(item.scrub_mm, 'mm', QUANTITIES.scrubRadius)}. All readings but the lower mark together have a standard uncertainty of ${mm(item.others_mm)} in it. The scrub radius moves by ${String(factor(item))} times what the lower mark is off. Within which ± must the lower mark be certain, anything in between as likely, so that nought lies just outside of twice the standard uncertainty?`,
  picture: (item) => ({
    scene: 'bars',
    title: 'Size of the scrub radius, and the doubt of all other readings',
    bars: [
      { says: mm(Math.abs(item.scrub_mm)).figure, value: scrub(item) },
      { says: mm(item.others_mm).figure, value: others(item) },
    ],
  }),
  wrong: (item, road) =>
    road.part === 'plus-minus'
      ? undefined
      : wrongBar(
          'Size of the scrub radius, the doubt of all other readings, and what is asked for',
          [
            { says: 'scrub radius', value: scrub(item) },
            { says: 'others', value: others(item) },
            { says: 'asked', value: road.answer },
          ],
          road,
        ),
  parts: [
    {
      id: 'whole',
      quantity: OWN_QUANTITIES.standardUncertainty,
      unit: 'mm',
      decimals: 1,
      label: 'Largest standard uncertainty that the scrub radius may have',
      value: (item) => scrub(item) / 2,
      sum: 'exact',
      hint: () =>
        phrase`Twice the standard uncertainty may reach from the result to nought, and no farther.`,
      slips: [
        {
          id: 'once',
          confuses: 'once for twice',
          value: scrub,
          text: () =>
            phrase`That takes once for twice the standard uncertainty. Once holds in about two cases of three only; the sign would be a guess in one of six.`,
        },
        {
          id: 'both-ends',
          confuses: 'whole width of the bar',
          value: (item) => scrub(item) / 4,
          text: () =>
            phrase`That fits the whole width of the bar between the result and nought. Only one half of the bar reaches toward nought; the other half goes the other way.`,
        },
        {
          id: 'doubled',
          confuses: 'doubling',
          value: (item) => 2 * scrub(item),
          text: () =>
            phrase`That comes from doubling. Twice the uncertainty has to fit into the distance to nought, so the uncertainty is half of that distance.`,
        },
        {
          id: 'third',
          confuses: 'three standard uncertainties',
          value: (item) => scrub(item) / 3,
          text: () =>
            phrase`That keeps nought three standard uncertainties away. It is stricter, and some trades ask for it. The question asks for two.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Half of the way to nought: ${mm(Math.abs(item.scrub_mm))} ÷ ${bare(2, 0)} = ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'left',
      quantity: OWN_QUANTITIES.contribution,
      unit: 'mm',
      decimals: 1,
      label: 'What the lower mark may contribute',
      value: (item, earlier) => rest(item, step(earlier, 0)),
      possible: (value) => value > 0,
      hint: () =>
        phrase`The squares of both contributions make the square of the whole. Which of the three is asked for?`,
      slips: [
        {
          id: 'plain-difference',
          confuses: 'plain difference',
          value: (item, earlier) => step(earlier, 0) - others(item),
          text: () =>
            phrase`That is the plain difference, as if uncertainties added up like lengths in a row. Independent ones add up in squares, and leave more room than that.`,
        },
        {
          id: 'squares-added',
          confuses: 'adding the squares',
          value: (item, earlier) => Math.hypot(step(earlier, 0), others(item)),
          text: () =>
            phrase`That comes from adding the squares, as on the way to the whole. The whole is known here and a part is asked for: take the square of the other part away.`,
        },
        {
          id: 'whole-for-it',
          confuses: 'whole allowance',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That gives the whole allowance to the lower mark. The other readings have used up a part of it already.`,
        },
        {
          id: 'no-root',
          confuses: 'sum of both',
          value: (item, earlier) => step(earlier, 0) + others(item),
          text: () =>
            phrase`That is the sum of both. What the lower mark may contribute is less than the whole, since the others contribute too.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${rounded(step(earlier, 0), 'mm', 1)} squared less ${mm(item.others_mm)} squared has the root ${rounded(value, 'mm', 2)}.`,
    },
    {
      id: 'plus-minus',
      quantity: OWN_QUANTITIES.plusMinus,
      unit: 'mm',
      decimals: 1,
      label: '± of the lower mark',
      value: (item, earlier) => halfWidth(item, step(earlier, 1)),
      hint: () =>
        phrase`Back from the result to the mark, over the factor; and back from the standard uncertainty to the ±, times the root of three.`,
      slips: [
        {
          id: 'no-root-three',
          confuses: 'standard uncertainty for the ±',
          value: (item, earlier) => step(earlier, 1) / factor(item),
          text: () =>
            phrase`That takes the standard uncertainty for the ±. With anything between the ends as likely, the ends are farther out: times the root of three.`,
        },
        {
          id: 'root-divided',
          confuses: 'dividing by the root',
          value: (item, earlier) => step(earlier, 1) / Math.sqrt(3) / factor(item),
          text: () =>
            phrase`That comes from dividing by the root of three, as on the way from a ± to the standard uncertainty. Here it goes backwards: multiply.`,
        },
        {
          id: 'factor-multiplied',
          confuses: 'multiplying by the factor',
          value: (item, earlier) => step(earlier, 1) * Math.sqrt(3) * factor(item),
          text: () =>
            phrase`That comes from multiplying by the factor, as on the way from the mark to the result. The mark has to be better than the result, not worse.`,
        },
        {
          id: 'factor-forgotten',
          confuses: 'lever from the mark to the floor',
          value: (_item, earlier) => step(earlier, 1) * Math.sqrt(3),
          text: () =>
            phrase`That leaves out the lever from the mark to the floor. The result moves by more than the mark is off, so the mark has to be sharper by the same factor.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Times √3, over the factor: ${rounded(step(earlier, 1), 'mm', 2)} · ${bare(Math.sqrt(3), 4)} ÷ ${bare(factor(item), 2)} = ${rounded(value, 'mm', 1)}.`,
    },
  ],
};
