import { expect } from 'vitest';
import { distance, type Vector } from '#core/vector.ts';

/** Expects two vectors to lie within a distance of each other. */
export function expectNear(actual: Vector, expected: Vector, within = 1e-12): void {
  const apart = distance(actual, expected);
  const { x, y, z } = actual;
  expect(
    apart,
    `(${x}, ${y}, ${z}) is ${apart} from (${expected.x}, ${expected.y}, ${expected.z})`,
  ).toBeLessThanOrEqual(within);
}

/** Expects two numbers to agree within a part of the larger scale of the two, or of 1. */
export function expectClose(actual: number, expected: number, relative = 1e-9): void {
  const scale = Math.max(1, Math.abs(actual), Math.abs(expected));
  expect(
    Math.abs(actual - expected),
    `${actual} is not ${expected} within ${relative} of ${scale}`,
  ).toBeLessThanOrEqual(relative * scale);
}
