import { UNITS, type UnitName } from '#core/units/units.ts';
import type { Given } from './givens.ts';

/** An answer in SI, with the unit that it is asked for in. */
interface Answer {
  readonly answer: number;
  readonly tolerance: number;
  readonly unit: UnitName;
}

/** Tolerances that must lie between an answer and nought or a slip, between two slips, and between an answer and a given. */
const FROM_ANSWER = 4;
const FROM_SLIP = 2;
const FROM_GIVEN = 1;

/** Engines may differ in the last digit of a tangent; no limit is as sharp as that. */
const SHARPNESS = 1 - 1e-9;

/**
 * Whether an answer can be told from nought, from every given and from every slip, and the slips from one
 * another.
 *
 * @param slips where the wrong roads end, in SI
 */
export function wellApart(
  { answer, tolerance, unit }: Answer,
  slips: readonly number[],
  givens: readonly Given[],
): boolean {
  if (!apart(answer, 0, FROM_ANSWER * tolerance)) return false;
  const { dimension } = UNITS[unit];
  // Loops, not callbacks: this is asked on every draw of every exercise.
  for (const given of givens) {
    const comparable = UNITS[given.unit].dimension === dimension;
    if (comparable && !apart(Math.abs(answer), Math.abs(given.si), FROM_GIVEN * tolerance))
      return false;
  }
  for (let i = 0; i < slips.length; i++) {
    const slip = slips[i] ?? NaN;
    if (!apart(answer, slip, FROM_ANSWER * tolerance)) return false;
    for (let before = 0; before < i; before++) {
      if (!apart(slips[before] ?? NaN, slip, FROM_SLIP * tolerance)) return false;
    }
  }
  return true;
}

const apart = (a: number, b: number, distance: number): boolean =>
  Math.abs(a - b) >= distance * SHARPNESS;
