import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { momentAbout } from '#core/line.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { steeredOnRack } from '#core/rack-travel.ts';
import { reactionTo } from '#core/reaction.ts';
import { rackSense, rodDirection, rodForce } from '#core/tie-rod.ts';
import { NOTHING, times } from '#core/vector.ts';
import { anyCorner, anyVector, between } from './corner-arbitraries.ts';
import { valueOf } from './example-corner.ts';
import { expectClose } from './near.ts';

describe('the force in a tie rod', () => {
  test('balances the moment that it holds', () => {
    fc.assert(
      fc.property(anyCorner, between(-500, 500), ({ axis, tieRod }, moment) => {
        const pull = times(valueOf(rodForce(axis, tieRod, moment)), rodDirection(tieRod));
        expectClose(moment + momentAbout(axis, tieRod.outer, pull), 0, 1e-9);
      }),
    );
  });

  test('on the rack turns round in the mirror, while the rod stays as it is', () => {
    fc.assert(
      fc.property(anyCorner, anyVector(5000), (corner, force) => {
        const action = { force, point: corner.wheelCentre, couple: NOTHING };
        const here = valueOf(reactionTo(corner, [action]));
        const other = mirroredCorner(corner);
        const mirroredForce = { ...force, y: -force.y };
        const there = valueOf(
          reactionTo(other, [{ ...action, force: mirroredForce, point: other.wheelCentre }]),
        );
        expectClose(there.tieRod?.rodForce ?? NaN, here.tieRod?.rodForce ?? NaN, 1e-9);
        expectClose(there.tieRod?.rackForce ?? NaN, -(here.tieRod?.rackForce ?? NaN), 1e-9);
      }),
    );
  });

  test('of several actions is the sum of what each brings', () => {
    fc.assert(
      fc.property(anyCorner, anyVector(5000), anyVector(5000), (corner, first, second) => {
        const action = (force: typeof first) => ({
          force,
          point: corner.wheelCentre,
          couple: NOTHING,
        });
        const rod = (...forces: (typeof first)[]) =>
          valueOf(reactionTo(corner, forces.map(action))).tieRod?.rodForce ?? NaN;
        expectClose(rod(first, second), rod(first) + rod(second), 1e-9);
      }),
    );
  });
});

describe('the rack', () => {
  test('goes the way that its sense says when the wheel turns to the left, on both sides', () => {
    fc.assert(
      fc.property(anyCorner, (corner) => {
        for (const side of [corner, mirroredCorner(corner)]) {
          const { corner: turned, rackTravel = NaN } = valueOf(steeredOnRack(side, 1e-4));
          // A rod that all but points at the axis leaves the rack where it is.
          fc.pre(Math.abs(rackTravel) > 1e-7);
          const { axis, tieRod = corner.tieRod } = turned;
          expect(rackSense(axis, tieRod)).toBe(Math.sign(rackTravel));
        }
      }),
    );
  });
});

describe('a corner without a tie rod', () => {
  test('has a moment and nothing to hold it', () => {
    fc.assert(
      fc.property(anyCorner, anyVector(5000), (corner, force) => {
        const action = { force, point: corner.wheelCentre, couple: NOTHING };
        const bare = valueOf(reactionTo({ ...corner, tieRod: undefined }, [action]));
        expect(bare).toEqual({ moment: valueOf(reactionTo(corner, [action])).moment });
      }),
    );
  });
});
