import { describe, expect, test } from 'vitest';
import type { CornerDocument } from '#core/document/corner-document.ts';
import type { CornerResult } from '#core/document/corner-result.ts';
import { solve } from '#core/document/solve.ts';
import { faultsOf } from '#core/fault.ts';
import { valueOf } from '../example-corner.ts';
import { BARE_DOCUMENT, GOOD_DOCUMENT } from './good-document.ts';

const solved = (document: CornerDocument): CornerResult => valueOf(solve(document));

/** The document without some of its members. */
function without(...keys: readonly (keyof CornerDocument)[]): CornerDocument {
  const members = Object.entries(GOOD_DOCUMENT).filter(
    ([key]) => !(keys as readonly string[]).includes(key),
  );
  return Object.fromEntries(members) as unknown as CornerDocument;
}

describe('a result', () => {
  test('has its keys in the order of the description', () => {
    const { geometry, steered, moments, hub } = solved(GOOD_DOCUMENT);
    expect(Object.keys(solved(GOOD_DOCUMENT))).toEqual(['geometry', 'steered', 'moments', 'hub']);
    expect(Object.keys(geometry)).toEqual([
      'inclination_deg',
      'caster_deg',
      'includedAngle_deg',
      'scrubRadius_mm',
      'trail_mm',
      'spindleOffset_mm',
      'casterOffsetAtCentre_mm',
      'axisDistance_mm',
      'groundPoint_mm',
      'contactCentre_mm',
    ]);
    expect(Object.keys(steered)).toEqual([
      'steer_deg',
      'camber_deg',
      'scrubRadius_mm',
      'trail_mm',
      'spindleOffset_mm',
      'lift_mm',
      'contactCentre_mm',
      'rackTravel_mm',
    ]);
    expect(Object.keys(moments?.[0] ?? {})).toEqual([
      'case',
      'moment_Nm',
      'sense',
      'rod_N',
      'rack_N',
      'handwheel_Nm',
    ]);
    expect(Object.keys(hub ?? {})).toEqual([
      'duty',
      'outboardL10_Mrev',
      'inboardL10_Mrev',
      'L10_Mrev',
      'L10_km',
      'withinScope',
    ]);
    expect(Object.keys(hub?.duty[0] ?? {})).toEqual([
      'outboardRadial_N',
      'inboardRadial_N',
      'outboardThrust_N',
      'inboardThrust_N',
      'outboardEquivalent_N',
      'inboardEquivalent_N',
    ]);
  });

  test('has one moment for each force and one step for each of the duty, in their order', () => {
    const { moments, hub } = solved(GOOD_DOCUMENT);
    expect(moments?.map((moment) => moment.case)).toEqual(
      GOOD_DOCUMENT.forces.map((force) => force.case),
    );
    expect(hub?.duty).toHaveLength(GOOD_DOCUMENT.hub.duty.length);
  });

  test('of a bare document has geometry alone', () => {
    const result = solved(BARE_DOCUMENT);
    expect(Object.keys(result)).toEqual(['geometry', 'steered']);
    expect(result.steered).not.toHaveProperty('rackTravel_mm');
  });

  test('without steering has moments and nothing that they do to it', () => {
    const { moments, steered } = solved(without('steering'));
    expect(Object.keys(moments?.[0] ?? {})).toEqual(['case', 'moment_Nm', 'sense']);
    expect(steered).not.toHaveProperty('rackTravel_mm');
  });

  test('without forces has no moments, and with an empty list of them an empty list', () => {
    expect(solved(without('forces'))).not.toHaveProperty('moments');
    expect(solved({ ...GOOD_DOCUMENT, forces: [] }).moments).toEqual([]);
  });

  test('without a hub has none', () => {
    expect(solved(without('hub'))).not.toHaveProperty('hub');
  });
});

describe('what may be left out', () => {
  test('stands for its default', () => {
    const { wheel, steering, axis, side, forces } = GOOD_DOCUMENT;
    const { camber_deg: _c, toe_deg: _t, rollingRadius_mm: _r, ...bareWheel } = wheel;
    const { assist: _a, ...bareSteering } = steering;
    const { hub } = GOOD_DOCUMENT;
    const short = { side, axis, wheel: bareWheel, steering: bareSteering, forces, hub };
    const long = {
      ...short,
      wheel: { ...bareWheel, camber_deg: 0, toe_deg: 0, rollingRadius_mm: 300 },
      rotation_deg: 0,
      steering: { ...bareSteering, assist: 1 },
      change: {
        spacer_mm: 0,
        inset_mm: 0,
        loadedRadius_mm: 0,
        camberAtUpperPivot_deg: 0,
        camberAtCarrier_deg: 0,
      },
    };
    expect(solved(short)).toEqual(solved(long));
  });
});

describe('a change', () => {
  const plain = { ...without('change'), rotation_deg: 0 };

  test('by a spacer moves the load line out with the wheel', () => {
    const spaced = solved({ ...plain, change: { spacer_mm: 15 } });
    const hub = { ...GOOD_DOCUMENT.hub, loadLineOffset_mm: 4 + 15 };
    expect(spaced.hub).toEqual(solved({ ...plain, hub }).hub);
  });

  test('by more inset moves the load line in', () => {
    const inset = solved({ ...plain, change: { inset_mm: 5 } });
    const hub = { ...GOOD_DOCUMENT.hub, loadLineOffset_mm: 4 - 5 };
    expect(inset.hub).toEqual(solved({ ...plain, hub }).hub);
  });

  test('of the loaded radius takes the rolling radius along', () => {
    const larger = solved({ ...plain, change: { loadedRadius_mm: 12 } });
    const { wheel } = GOOD_DOCUMENT;
    const changed = { ...wheel, loadedRadius_mm: 312, rollingRadius_mm: 318 };
    expect(larger).toEqual(solved({ ...plain, wheel: changed }));
  });

  test('shows in the geometry straight ahead', () => {
    const before = solved(plain).geometry;
    const after = solved({ ...plain, change: { camberAtUpperPivot_deg: -1 } }).geometry;
    expect(after.inclination_deg - before.inclination_deg).toBeCloseTo(1, 9);
    expect(after.includedAngle_deg).toBeCloseTo(before.includedAngle_deg, 5);
  });
});

describe('a document that cannot be solved', () => {
  const pathsOf = (document: CornerDocument) => faultsOf(solve(document)).map(({ path }) => path);

  test('has a tie rod that does not reach its rotated carrier', () => {
    const steering = { ...GOOD_DOCUMENT.steering, inner_mm: [-120, 570, 215] } as const;
    expect(pathsOf({ ...GOOD_DOCUMENT, steering, rotation_deg: 60 })).toEqual(['rotation_deg']);
  });

  test('has a tie rod that loses its lever by the rotation', () => {
    // The rod comes to point at the axis somewhere on the way round.
    const steering = { ...GOOD_DOCUMENT.steering, outer_mm: [-60, 600, 215] } as const;
    const faults = Array.from({ length: 8001 }, (_, step) =>
      pathsOf({ ...GOOD_DOCUMENT, steering, change: {}, rotation_deg: -80 + 0.02 * step }),
    );
    expect(new Set(faults.flat())).toEqual(new Set(['rotation_deg']));
  });

  test('has a tie rod that loses its lever by the change', () => {
    const rod = { outer_mm: [0, 600, 310], inner_mm: [0, 330, 310] } as const;
    const steering = { ...GOOD_DOCUMENT.steering, ...rod };
    const document = { ...GOOD_DOCUMENT, steering, rotation_deg: 0 };
    expect(pathsOf({ ...document, change: { camberAtCarrier_deg: 0 } })).toEqual([]);
    const faults = [-20, 20].map((camberAtCarrier_deg) =>
      pathsOf({ ...document, change: { camberAtCarrier_deg } }),
    );
    expect(faults).toContainEqual(['change']);
  });

  test('lays its wheel flat', () => {
    // Worked by hand: an axis 53° from the vertical carries this spin axis down to the vertical in 77°.
    const axis = { inclination_deg: 30, caster_deg: 50.24, scrubRadius_mm: 0, trail_mm: 0 };
    const wheel = { centre_mm: [0, 720, 300], camber_deg: 30, loadedRadius_mm: 300 } as const;
    const flat = { side: 'left', axis, wheel, rotation_deg: 77.4 } as const;
    expect(pathsOf(flat)).toEqual(['rotation_deg']);
    expect(pathsOf({ ...flat, rotation_deg: -77.4 })).toEqual([]);
  });

  test('has a row that nothing loads', () => {
    // The tyre force points at the outboard pressure centre, and all thrust is the outboard row's. The
    // numbers are sums of powers of two, so that nothing is lost in the last digit.
    const { hub, wheel } = GOOD_DOCUMENT;
    const duty = [{ share: 1, vertical_N: 1000, inward_N: 1000 }];
    const idle = {
      ...without('change'),
      wheel: { ...wheel, loadedRadius_mm: 250 },
      hub: { ...hub, loadLineOffset_mm: 281.25, spread_mm: 62.5, duty },
    };
    expect(pathsOf(idle)).toEqual(['hub.duty']);
  });

  test('is one that the reader refuses: the same faults', () => {
    const wheel = { ...GOOD_DOCUMENT.wheel, centre_mm: [0, 1900, 300] } as const;
    expect(pathsOf({ ...GOOD_DOCUMENT, wheel })).toEqual(['wheel.centre_mm']);
  });
});
