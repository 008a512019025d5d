import { combined, expanded, type Combined } from '../uncertainty/linear.ts';
import { chanceOfSign } from '../uncertainty/normal.ts';
import { modelOf, type ResultId } from './front-geometry.ts';
import { measurementsOf } from './readings-of.ts';
import type { Readings } from './readings.ts';

/** A result of measuring one’s own car, with how sure it is. SI. */
export interface Finding extends Combined {
  /** U = 2u: the result lies within ±U in about 95 cases of 100. */
  readonly plusMinus: number;
  /** How likely the result has the sign of its best estimate, from 0.5 to 1. */
  readonly chance: number;
}

/**
 * What readings and their ± come to for one result, along the slope of the formulas.
 *
 * Source: JCGM 100:2008, 5.1.2 and 6.2.
 */
export function findingOf(id: ResultId, readings: Readings, doubts: Readings): Finding {
  const found = combined(modelOf(id), measurementsOf(readings, doubts));
  return {
    ...found,
    plusMinus: expanded(found.standard),
    chance: chanceOfSign(found.value, found.standard),
  };
}
