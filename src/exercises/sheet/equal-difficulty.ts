import type { Exercise } from '../exercise.ts';
import type { ExerciseKind } from '../registry.ts';
import type { Sheet } from './sheet.ts';
import { exerciseAt, MODEL } from './variant.ts';

/** How the variants of one position compare. */
export interface PositionCheck {
  readonly kind: string;
  /** Whether all have the same steps, the same pattern and the same signs. */
  readonly equal: boolean;
  /** How many different sets of answers there are. */
  readonly different: number;
  /** Students who share all answers of the position with somebody else. */
  readonly sharing: number;
  /** The last answer, smallest and largest in size, in SI. */
  readonly least: number;
  readonly most: number;
}

/** Draws everybody's variant and looks whether all are as hard as one another, and how many are alike. */
export function compareVariants(
  sheet: Sheet,
  kinds: readonly ExerciseKind[],
  numbers: readonly number[],
): readonly PositionCheck[] {
  return sheet.items.map(({ kind }, position) => {
    const model = shapeOf(exerciseAt(sheet, kinds, position, MODEL));
    const variants = numbers.map((number) => exerciseAt(sheet, kinds, position, number));
    const counts = new Map<string, number>();
    for (const variant of variants) {
      const answers = answersOf(variant);
      counts.set(answers, (counts.get(answers) ?? 0) + 1);
    }
    const sizes = variants.map(({ parts }) => Math.abs(parts.at(-1)?.answer ?? NaN));
    return {
      kind,
      equal: variants.every((variant) => shapeOf(variant) === model),
      different: counts.size,
      sharing: [...counts.values()].reduce((sum, n) => sum + (n > 1 ? n : 0), 0),
      least: Math.min(...sizes),
      most: Math.max(...sizes),
    };
  });
}

/** Steps, units and decimals asked for, and the signature. */
const shapeOf = (exercise: Exercise): string =>
  JSON.stringify([
    exercise.signature(),
    exercise.parts.map(({ definition: { id, unit, decimals } }) => [id, unit, decimals]),
  ]);

/** Answers that differ by less than a tolerance would be marked alike. */
const answersOf = ({ parts }: Exercise): string =>
  parts.map(({ answer, tolerance }) => Math.round(answer / (2 * tolerance))).join(' ');
