import { describe, expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { angleForRod } from '#core/angle-for-rod.ts';
import { changed, NO_CHANGE } from '#core/change.ts';
import { spinAxis } from '#core/corner.ts';
import { faultsOf } from '#core/fault.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { rodLength } from '#core/tie-rod.ts';
import { toeOf, toeOnRod } from '#core/toe.ts';
import { EXAMPLE, valueOf } from './example-corner.ts';

const LENGTH = rodLength(EXAMPLE.tieRod ?? { outer: EXAMPLE.spin, inner: EXAMPLE.spin });

describe('toe', () => {
  test.each(['left', 'right'] as const)('is what a %s spin axis was made with', (side) => {
    const spin = spinAxis(side, radians(-1.5), radians(0.4));
    expect(toeOf({ side, spin })).toBeCloseTo(radians(0.4), 12);
  });

  test('is toe-out on both sides when the rods behind the axes are too short', () => {
    const shorter = LENGTH - 0.002;
    expect(valueOf(toeOnRod(EXAMPLE, shorter))).toBeLessThan(0);
    expect(valueOf(toeOnRod(mirroredCorner(EXAMPLE), shorter))).toBeCloseTo(
      valueOf(toeOnRod(EXAMPLE, shorter)),
      12,
    );
  });

  test('changes with a camber set at the top while the rod is left alone', () => {
    const camberAtUpperPivot = radians(-1.5);
    const after = changed(EXAMPLE, { ...NO_CHANGE, camberAtUpperPivot });
    expect(Math.abs(valueOf(toeOnRod(after, LENGTH)))).toBeGreaterThan(radians(0.05));
  });
});

describe('a rod', () => {
  test('of its own length leaves the carrier where it is', () => {
    expect(valueOf(angleForRod(EXAMPLE, LENGTH))).toBeCloseTo(0, 12);
  });

  test.each([
    ['far too long', 2],
    ['far too short', 0.01],
  ])('%s cannot hold the carrier anywhere', (_, length) => {
    expect(faultsOf(angleForRod(EXAMPLE, length))).toHaveLength(1);
    expect(faultsOf(toeOnRod(EXAMPLE, length))).toHaveLength(1);
  });

  test('that is not there holds nothing', () => {
    expect(faultsOf(angleForRod({ axis: EXAMPLE.axis }, LENGTH))).toHaveLength(1);
  });
});
