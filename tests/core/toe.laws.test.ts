import fc from 'fast-check';
import { describe, test } from 'vitest';
import { angleForRod } from '#core/angle-for-rod.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { steered } from '#core/steering.ts';
import { rodLength } from '#core/tie-rod.ts';
import { toeOf, toeOnRod } from '#core/toe.ts';
import { anyAngle_deg, anyCorner } from './corner-arbitraries.ts';
import { valueOf } from './example-corner.ts';
import { expectClose } from './near.ts';

/** Far from where the rod’s line passes the axis: there the nearer solution is the only one in question. */
const anySmallAngle = anyAngle_deg(-8, 8);

describe('a rod that keeps its length', () => {
  test('turns the carrier back by as much as it has been turned', () => {
    fc.assert(
      fc.property(anyCorner, anySmallAngle, (corner, angle) => {
        const away = steered(corner, angle);
        expectClose(valueOf(angleForRod(away, rodLength(corner.tieRod))), -angle, 1e-9);
        expectClose(valueOf(toeOnRod(away, rodLength(corner.tieRod))), toeOf(corner), 1e-9);
      }),
    );
  });

  test('turns mirrored carriers opposite ways, to the same toe', () => {
    fc.assert(
      fc.property(anyCorner, anyAngle_deg(-3, 3), (corner, angle) => {
        const away = steered(corner, angle);
        const length = rodLength(corner.tieRod);
        const other = mirroredCorner(away);
        expectClose(valueOf(angleForRod(other, length)), -valueOf(angleForRod(away, length)), 1e-9);
        expectClose(valueOf(toeOnRod(other, length)), valueOf(toeOnRod(away, length)), 1e-9);
      }),
    );
  });
});
