import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CornerDocument, Triple } from '#core/document/corner-document.ts';
import type { CornerResult } from '#core/document/corner-result.ts';
import { RANGES } from '#core/document/ranges.ts';
import { readCornerDocument } from '#core/document/read-corner-document.ts';
import { solve } from '#core/document/solve.ts';
import { expectClose } from '../near.ts';
import { valueOf } from '../example-corner.ts';
import { anyDocument } from './document-arbitraries.ts';
import { replaced, valueAt, waysInto } from './edit.ts';
import { GOOD_DOCUMENT } from './good-document.ts';

const solved = (document: CornerDocument): CornerResult => valueOf(solve(document));

describe('a result', () => {
  test('is the same after it has been written as JSON and read', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        const result = solved(document);
        // Strict: no undefined member, no −0, nothing that JSON does not have.
        expect(JSON.parse(JSON.stringify(result))).toStrictEqual(result);
      }),
    );
  });

  test('straight ahead is the same steered and not', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        const { geometry, steered } = solved({ ...document, rotation_deg: 0 });
        const { scrubRadius_mm, trail_mm, spindleOffset_mm, contactCentre_mm } = geometry;
        expect(steered).toMatchObject({
          steer_deg: 0,
          lift_mm: 0,
          scrubRadius_mm,
          trail_mm,
          spindleOffset_mm,
          contactCentre_mm,
        });
      }),
    );
  });

  test('on the right side is the mirror image of that on the left', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        const left = solved(document);
        const right = solved(mirroredDocument(document));
        const { groundPoint_mm: _here, contactCentre_mm: _at, ...lengths } = left.geometry;
        for (const [key, value] of Object.entries(lengths))
          expectClose(right.geometry[key as keyof typeof lengths], value, 1e-9);
        expectClose(right.steered.steer_deg, -left.steered.steer_deg, 1e-9);
        expectClose(right.steered.lift_mm, left.steered.lift_mm, 1e-9);
        expectClose(right.steered.rackTravel_mm ?? 0, -(left.steered.rackTravel_mm ?? 0), 1e-9);
        left.moments?.forEach((moment, index) => {
          const other = right.moments?.[index];
          expectClose(other?.moment_Nm ?? NaN, -moment.moment_Nm, 1e-9);
          expectClose(other?.rack_N ?? 0, -(moment.rack_N ?? 0), 1e-9);
          expectClose(other?.rod_N ?? 0, moment.rod_N ?? 0, 1e-9);
        });
        expect(right.hub).toEqual(left.hub);
      }),
    );
  });

  test('of an axis by its own angles is that of the axis by its pivots', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        const { change: _change, ...plain } = document;
        const { geometry } = solved(plain);
        const { inclination_deg, caster_deg, scrubRadius_mm, trail_mm } = geometry;
        const axis = { inclination_deg, caster_deg, scrubRadius_mm, trail_mm };
        const byAngles = solved({ ...plain, axis });
        expectClose(byAngles.geometry.axisDistance_mm, geometry.axisDistance_mm, 1e-9);
        const moments = solved(plain).moments ?? [];
        moments.forEach(({ moment_Nm }, index) => {
          expectClose(byAngles.moments?.[index]?.moment_Nm ?? NaN, moment_Nm, 1e-9);
        });
      }),
    );
  });
});

describe('any document that the reader takes', () => {
  /** Every end of every range, and what lies about it. */
  const extremes = Object.values(RANGES).flatMap(({ least, most }) => [
    least,
    most,
    least / 2,
    most / 2,
    0,
    1e-300,
    -1e-12,
  ]);

  const numbers = waysInto(GOOD_DOCUMENT).filter(
    (way) => typeof valueAt(GOOD_DOCUMENT, way) === 'number',
  );

  test('has a result of finite numbers or a fault, however extreme', () => {
    const edits = fc.array(fc.tuple(fc.constantFrom(...numbers), fc.constantFrom(...extremes)), {
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(edits, (chosen) => {
        const value = chosen.reduce<unknown>(
          (soFar, [way, by]) => replaced(soFar, way, by),
          GOOD_DOCUMENT,
        );
        const document = readCornerDocument(value);
        if (!document.ok) return;
        const outcome = solve(document.value);
        if (outcome.ok)
          expect(JSON.parse(JSON.stringify(outcome.value))).toStrictEqual(outcome.value);
        else expect(outcome.faults.length).toBeGreaterThan(0);
      }),
      { numRuns: 3000 },
    );
  });
});

function mirroredDocument(document: CornerDocument): CornerDocument {
  const mirror = ([x, y, z]: Triple): Triple => [x, -y, z];
  const { axis, wheel, steering, forces, rotation_deg } = document;
  return {
    ...document,
    side: 'right',
    axis:
      'lower_mm' in axis
        ? { lower_mm: mirror(axis.lower_mm), upper_mm: mirror(axis.upper_mm) }
        : axis,
    wheel: { ...wheel, centre_mm: mirror(wheel.centre_mm) },
    ...(rotation_deg !== undefined && { rotation_deg: -rotation_deg }),
    ...(steering && {
      steering: {
        ...steering,
        outer_mm: mirror(steering.outer_mm),
        inner_mm: mirror(steering.inner_mm),
      },
    }),
    ...(forces && {
      forces: forces.map((force) => {
        switch (force.case) {
          case 'impact':
            return { ...force, vector_N: mirror(force.vector_N) };
          case 'lateral':
            return { ...force, force_N: -force.force_N };
          case 'shaft':
            return force.shaftDirection
              ? { ...force, shaftDirection: mirror(force.shaftDirection) }
              : force;
          default:
            return force;
        }
      }),
    }),
  };
}
