import { QUANTITIES } from '#core/quantities.ts';
import { toSI } from '#core/units/convert.ts';
import { drawExercise, type Exercise } from '#exercises/exercise.ts';
import { step, type Kind } from '#exercises/kind.ts';
import { mm, phrase } from '#exercises/phrase.ts';

interface Item {
  readonly first_mm: number;
  readonly second_mm: number;
}

const first = ({ first_mm }: Item): number => toSI(first_mm, 'mm');
const second = ({ second_mm }: Item): number => toSI(second_mm, 'mm');

/** Three parts that are easy to follow in a test: twice the first number, less the second, by a hundred millimetres as an angle. */
export const SAMPLE: Kind<Item> = {
  id: 'sample',
  version: 1,
  title: 'A sample',
  lesson: 'none',
  level: 2,
  draw: () => ({ first_mm: 30, second_mm: 44 }),
  sound: () => true,
  pattern: () => 'fixed',
  question: ({ first_mm, second_mm }) => phrase`Given are ${mm(first_mm)} and ${mm(second_mm)}.`,
  parts: [
    {
      id: 'double',
      quantity: QUANTITIES.loadedRadius,
      unit: 'mm',
      decimals: 0,
      label: 'Twice the first number',
      value: (item) => 2 * first(item),
      sum: 'exact',
      hint: () => phrase`Take the first number twice.`,
      slips: [
        {
          id: 'squared',
          confuses: 'square',
          value: (item) => (first(item) * first(item)) / toSI(10, 'mm'),
          text: () => phrase`That is the square over ten.`,
        },
      ],
      solution: (_item, _earlier, value) => phrase`It is ${mm(value * 1000)}.`,
    },
    {
      id: 'less',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 0,
      label: 'That less the second number',
      value: (item, earlier) => step(earlier, 0) - second(item),
      sum: 'exact',
      possible: (value) => value > -0.1,
      weight: 2,
      hint: () => phrase`Take the second number away.`,
      slips: [
        {
          id: 'added',
          confuses: 'sum',
          value: (item, earlier) => step(earlier, 0) + second(item),
          text: () => phrase`That is the sum.`,
        },
      ],
      solution: (_item, _earlier, value) => phrase`It is ${mm(value * 1000)}.`,
    },
    {
      id: 'angle',
      quantity: QUANTITIES.caster,
      unit: 'deg',
      decimals: 1,
      label: 'Angle over a hundred millimetres',
      value: (_item, earlier) => Math.atan(step(earlier, 1) / toSI(100, 'mm')),
      hint: () => phrase`Take the arc tangent.`,
      slips: [
        {
          id: 'doubled',
          confuses: 'double angle',
          value: (_item, earlier) => 2 * Math.atan(step(earlier, 1) / toSI(100, 'mm')),
          text: () => phrase`That is the double angle.`,
        },
      ],
      solution: () => phrase`It is so.`,
    },
  ],
};

/** Answers: 60 mm, 16 mm, 9.09°. Marks: 1, 2, 1. */
export const sample = (): Exercise => drawExercise(SAMPLE, 'any');
