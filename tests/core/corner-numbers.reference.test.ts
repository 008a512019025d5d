import fc from 'fast-check';
import { describe, test } from 'vitest';
import {
  coreNumbers,
  type CornerCalculation,
  type CornerNumbers,
  type Measures,
} from '../references/corner-numbers.ts';
import { mathjsNumbers } from '../references/mathjs-numbers.ts';
import { threeNumbers } from '../references/three-numbers.ts';
import { anyLoadedCorner, anyRotation } from './corner-arbitraries.ts';
import { expectClose } from './near.ts';

const libraries: readonly (readonly [string, CornerCalculation])[] = [
  ['the vectors and quaternions of three.js', threeNumbers],
  ['the matrices of mathjs', mathjsNumbers],
];

describe.each(libraries)('a corner worked out a second time with %s', (_, calculate) => {
  test('comes to the same geometry, steer, lift and moments', () => {
    fc.assert(
      fc.property(anyLoadedCorner, anyRotation, ([corner, load], angle) => {
        const loads = [load];
        expectSameNumbers(coreNumbers(corner, angle, loads), calculate(corner, angle, loads));
      }),
    );
  });
});

const MEASURES = [
  'inclination',
  'caster',
  'camber',
  'scrubRadius',
  'trail',
  'spindleOffset',
  'casterOffsetAtCentre',
  'axisDistance',
] as const satisfies readonly (keyof Measures)[];

/** Both sides round some fifty products; the tolerance leaves a hundred times that. */
function expectSameNumbers(actual: CornerNumbers, expected: CornerNumbers): void {
  const near = (ours: number | undefined, theirs: number) => {
    expectClose(ours ?? NaN, theirs, 1e-12);
  };
  for (const key of MEASURES) {
    near(actual.geometry[key], expected.geometry[key]);
    near(actual.steered[key], expected.steered[key]);
  }
  near(actual.steered.steer, expected.steered.steer);
  near(actual.steered.lift, expected.steered.lift);
  expected.moments.forEach((moment, index) => {
    near(actual.moments[index], moment);
  });
}
