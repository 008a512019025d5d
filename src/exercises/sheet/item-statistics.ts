import { correlation, fisher, wilson, type Estimate } from './chance.ts';
import type { MarkedResult } from './mark-result.ts';
import { FEW } from './statistics.ts';

/** How one exercise of a sheet did in a class. */
export interface ItemStatistics {
  readonly students: number;
  /** How many earned all marks of the exercise. */
  readonly right: number;
  /** That as a share; left out where there are too few students to say. */
  readonly facility?: Estimate;
  /**
   * How far those who have it right earn more on the rest of the sheet (corrected point-biserial correlation);
   * left out besides where all or none have it right, or nothing else is on the sheet.
   */
  readonly discrimination?: Estimate;
  /** What that says, from a hundred students on. */
  readonly words?: string;
}

/** From so many answers on an exercise may be called easy, hard or odd. */
export const MANY = 100;

/** Facility and discrimination of each exercise of a sheet. */
export function itemStatistics(results: readonly MarkedResult[]): readonly ItemStatistics[] {
  const count = results[0]?.items.length ?? 0;
  return Array.from({ length: count }, (_, position) => {
    const own = results.map(({ items }) => (isRight(items[position]) ? 1 : 0));
    const rest = results.map(({ earned, items }) => earned - (items[position]?.earned ?? 0));
    return statisticsOf(own, rest);
  });
}

/**
 * The same from numbers: for each student, whether the exercise is right (1 or 0) and the marks earned on the rest
 * of the sheet.
 */
export function statisticsOf(own: readonly number[], rest: readonly number[]): ItemStatistics {
  const students = own.length;
  const right = own.reduce((sum, one) => sum + one, 0);
  if (students < FEW) return { students, right };
  const facility = wilson(right, students);
  const r = correlation(own, rest);
  const discrimination = r === undefined ? undefined : fisher(r, students);
  return {
    students,
    right,
    facility,
    ...(discrimination && { discrimination }),
    ...(students >= MANY && { words: inWords(facility, discrimination) }),
  };
}

/** Whether somebody earned all marks of an exercise; shares of marks do not add up to the last digit. */
export const isRight = (item: MarkedResult['items'][number] | undefined): boolean =>
  item !== undefined && item.earned > item.possible * (1 - 1e-9);

/**
 * Guide values: between 0.3 and 0.7 right is usual; a correlation from 0.3 up is good, from 0.2 fair, below it
 * worth a look, and below nought wrong.
 *
 * Source: Ebel and Frisbie, Essentials of Educational Measurement, 5th ed. 1991 (from memory).
 */
function inWords(facility: Estimate, discrimination: Estimate | undefined): string {
  const level =
    facility.value < 0.3 ? 'Hard' : facility.value > 0.7 ? 'Easy' : 'Of usual difficulty';
  const r = discrimination?.value;
  if (r === undefined) return `${level}.`;
  if (r < 0)
    return `${level}. Those who are good at the rest do worse here: look for what misleads.`;
  if (r < 0.2) return `${level}. Hardly goes with the rest of the sheet: worth a look.`;
  return r < 0.3 ? `${level}. Goes fairly with the rest.` : `${level}. Goes well with the rest.`;
}
