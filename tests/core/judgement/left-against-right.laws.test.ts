import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';
import { casterOf, inclinationOf } from '#core/geometry.ts';
import { lengthForScrub } from '#core/judgement/bench-answers.ts';
import type { BenchDocument } from '#core/judgement/bench-document.ts';
import { setUpBench, type BenchSetup } from '#core/judgement/bench-setup.ts';
import { leftOut, toHaveChecked } from '#core/judgement/cautions.ts';
import { cornerModels } from '#core/judgement/corner-model.ts';
import { CROSS_IDS, type CrossId } from '#core/judgement/cross-inputs.ts';
import type { Finding, Judgement } from '#core/judgement/finding.ts';
import { INPUT_IDS, type InputId } from '#core/judgement/inputs.ts';
import { judgedQuantity } from '#core/judgement/judged-quantities.ts';
import { continueTrials, luckOf, startTrials } from '#core/judgement/trials.ts';
import { judgeByTrials } from '#core/judgement/judge-by-trials.ts';
import { GARAGE_FILES, garageBench, garageSetup } from '../../garage-benches.ts';
import { valueOf } from '../example-corner.ts';
import { expectClose } from '../near.ts';
import { find, judged, setUp } from './judged-bench.ts';
import { seeded } from '../uncertainty/seeded.ts';

/** Scenarios of cars that stand alike. */
const ALIKE = [...GARAGE_FILES.keys()].filter((id) => !garageSetup(id).car.apart);
/** One whose axis comes from the sheet, one whose pivots are measured. */
const BOTH_WAYS = ['taller-tyres', 'slotted-strut-bolts'];

type Edits = Partial<Readonly<Record<InputId, number>>>;

/** A bench with other values: their ± stay, and what is new is exact. */
function withValues(bench: BenchDocument, edits: Edits): BenchDocument {
  const { values } = bench.car;
  const edited = Object.entries(edits).map(([id, value]) => {
    const own = values[id as InputId];
    return [id, own ? { ...own, value } : { value, plusMinus: 0, source: 'sheet' }];
  });
  const all = { ...values, ...Object.fromEntries(edited) } as typeof values;
  return { ...bench, car: { ...bench.car, values: all } };
}

/** What turns a left wheel to the left turns its mirror image to the right. */
const mirrorSign = ({ id }: Pick<Finding, 'id'>): number =>
  judgedQuantity(id).group === 'moments' ? -1 : 1;

/** Every result of one wheel is that of a wheel of another car, seen in the mirror where it is on the other side. */
function expectSame(
  one: Judgement,
  place: 'left' | 'right',
  other: Judgement,
  otherPlace: 'left' | 'right',
): void {
  const wheel = one.findings.filter((finding) => finding.place === place);
  expect(wheel.length).toBeGreaterThan(20);
  for (const finding of wheel) {
    const mirror = find(other, finding.id, otherPlace);
    const sign = place === otherPlace ? 1 : mirrorSign(finding);
    for (const when of ['before', 'after'] as const)
      expectClose(sign * mirror[when].value, finding[when].value, 1e-9);
  }
}

const NO_CROSS = Object.fromEntries(CROSS_IDS.map((id) => [id, 0])) as Record<CrossId, number>;

describe('nothing entered that left and right differ by', () => {
  test.each(ALIKE)('leaves one column, and no number to draw for it: %s', (id) => {
    const setup = garageSetup(id);
    expect(setup.inputs).toHaveLength(INPUT_IDS.length - CROSS_IDS.length);
    const { findings } = judged(garageBench(id), { name: 'x', both: { spacer_mm: 5 } });
    expect(findings.filter(({ place }) => place === 'right')).toEqual([]);
  });

  test.each(ALIKE)('is the same as differences of nought: %s', (id) => {
    const bench = garageBench(id);
    const variant = { name: 'x', both: { spacer_mm: 5 } } as const;
    const alike = judged(bench, variant);
    const apart = judged(withValues(bench, NO_CROSS), variant);
    for (const finding of alike.findings) {
      const same = find(apart, finding.id, finding.place);
      for (const when of ['before', 'after', 'difference'] as const)
        for (const end of ['value', 'least', 'most'] as const)
          expectClose(same[when][end], finding[when][end], 1e-9);
    }
    expectSame(apart, 'left', apart, 'right');
  });
});

const cross = fc.integer({ min: -30, max: 30 }).map((tenths) => tenths / 10);
const crosses = fc.record({
  crossCamber_deg: cross,
  crossCaster_deg: cross,
  crossInclination_deg: cross,
});

const best = (setup: BenchSetup, id: InputId): number => setup.known[id].value;

/** The car of which the left wheel is the right one of this car, by hand: angles less their differences. */
function otherSideAsLeft(bench: BenchDocument, less: Record<CrossId, number>): BenchDocument {
  const setup = setUp(bench);
  const camber_deg = degrees(best(setup, 'camber_deg')) - less.crossCamber_deg;
  const [caster, inclination] = (
    [
      ['caster_deg', 'crossCaster_deg'],
      ['inclination_deg', 'crossInclination_deg'],
    ] as const
  ).map(([id, by]) => degrees(best(setup, id)) - less[by]);
  if (bench.car.axisFrom === 'sheet')
    return withValues(bench, {
      camber_deg,
      caster_deg: caster ?? NaN,
      inclination_deg: inclination ?? NaN,
    });
  const mm = (id: InputId): number => 1000 * best(setup, id);
  const rise = mm('upperUp_mm') - mm('lowerUp_mm');
  const leaned = (run: number, by: number): number =>
    rise * Math.tan(Math.atan(run / rise) - radians(by));
  return withValues(bench, {
    camber_deg,
    upperIn_mm:
      mm('lowerIn_mm') + leaned(mm('upperIn_mm') - mm('lowerIn_mm'), less.crossInclination_deg),
    upperAhead_mm:
      mm('lowerAhead_mm') - leaned(mm('lowerAhead_mm') - mm('upperAhead_mm'), less.crossCaster_deg),
  });
}

describe.each(BOTH_WAYS)('what left and right differ by, on %s', (id) => {
  const bench = garageBench(id);
  const [onLeft, onRight] = [{ spacer_mm: 6, camberAtCarrier_deg: -0.5 }, { spacer_mm: 2 }];

  test('gives the right wheel what a left one of its own angles has', () => {
    fc.assert(
      fc.property(crosses, (less) => {
        const apart = judged(withValues(bench, less), { name: 'x', left: onLeft, right: onRight });
        const asLeft = judged(otherSideAsLeft(bench, less), { name: 'x', both: onRight });
        expectSame(apart, 'right', asLeft, 'left');
        expectSame(
          apart,
          'left',
          judged(bench, { name: 'x', left: onLeft, right: onRight }),
          'left',
        );
      }),
      { numRuns: 40 },
    );
  });

  test('seen in the mirror, swaps both wheels, and brakes that are equal pull the other way', () => {
    fc.assert(
      fc.property(crosses, (less) => {
        const turned = Object.fromEntries(
          Object.entries(less).map(([one, value]) => [one, -value]),
        );
        const apart = judged(withValues(bench, less), { name: 'x', left: onLeft, right: onRight });
        const swapped = judged(withValues(otherSideAsLeft(bench, less), turned), {
          name: 'x',
          left: onRight,
          right: onLeft,
        });
        expectSame(apart, 'left', swapped, 'right');
        expectSame(apart, 'right', swapped, 'left');
        const [pull, pullBack] = [apart, swapped].map((one) =>
          find(one, 'brakingRimForce', 'axle'),
        );
        const [track, sameTrack] = [apart, swapped].map((one) => find(one, 'track', 'axle'));
        for (const when of ['before', 'after'] as const) {
          expectClose(pull?.[when].value ?? NaN, -(pullBack?.[when].value ?? NaN), 1e-9);
          expectClose(track?.[when].value ?? NaN, sameTrack?.[when].value ?? NaN, 1e-9);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('leans the right axis by its angles about a lower pivot that is the mirror image of the left one', () => {
    const less = { crossCamber_deg: 0, crossCaster_deg: 1.5, crossInclination_deg: -0.8 };
    const apart = withValues(bench, less);
    const { left, right } = cornerModels(setUp(apart), apart.car);
    const [l, r] = [left.corner, right.corner];
    expectClose(degrees(casterOf(l.axis) - casterOf(r.axis)), 1.5, 1e-9);
    expectClose(
      degrees(inclinationOf(l.axis, 'left') - inclinationOf(r.axis, 'right')),
      -0.8,
      1e-9,
    );
    expect(r.side).toBe('right');
    expectClose(r.pivots.lower.y, -l.pivots.lower.y, 1e-12);
    expectClose(r.pivots.upper.z, l.pivots.upper.z, 1e-12);
  });
});

describe('a car whose wheels differ', () => {
  const bench = garageBench('left-and-right-differ');
  const setup = setUp(bench);
  const nothing = judged(bench, { name: 'x', both: {} });
  const before = (id: Finding['id'], place: 'left' | 'right' | 'axle'): number =>
    find(nothing, id, place).before.value;

  test('has scrub radius and trail on each side as worked by hand', () => {
    // h = 292 mm, lower pivot 180 mm up; r falls by h tan γ and by 180 tan σ, n grows by 180 tan τ. Source: worked by hand.
    const tan = (angle_deg: number): number => Math.tan((angle_deg * Math.PI) / 180);
    const scrub = -292 * (tan(-0.4) - tan(-1.1)) - 180 * (tan(13.2) - tan(13.7));
    // Tolerance: toe of 0.1°, which the hand leaves out, turns a length by its 600th part.
    expect(1000 * (before('scrubRadius', 'left') - before('scrubRadius', 'right'))).toBeCloseTo(
      scrub,
      1,
    );
    const trail = 180 * (tan(3.6) - tan(4.2));
    expect(1000 * (before('trail', 'left') - before('trail', 'right'))).toBeCloseTo(trail, 1);
  });

  test('pulls at the steering wheel when both brakes are equal, to where the stronger moment turns it', () => {
    const moments = before('brakeMoment', 'left') + before('brakeMoment', 'right');
    expect(Math.abs(moments)).toBeGreaterThan(1);
    expect(Math.sign(before('brakingRimForce', 'axle'))).toBe(Math.sign(moments));
  });

  test('knows the sign of the scrub radius of each wheel by itself', () => {
    const [left, right] = judged(bench, { name: 'x', both: { spacer_mm: 8 } }).scrub;
    expect([left?.place, right?.place]).toEqual(['left', 'right']);
    expect([left?.after.known, right?.after.known]).toEqual([true, false]);
  });

  test('doubts the right wheel by what both readings add up to', () => {
    const { standard } = find(nothing, 'camber', 'right').before;
    const [own, by] = [setup.known.camber_deg, setup.known.crossCamber_deg];
    expectClose(standard, Math.hypot(own.plusMinus, by.plusMinus) / Math.sqrt(3), 1e-6);
    const luck = luckOf(setup, seeded(9), 2000);
    const alike = { spacer: 0, camberAtUpperPivot: 0, camberAtCarrier: 0 };
    const changes = { left: alike, right: alike };
    const run = continueTrials(startTrials(setup, luck), setup, changes, luck, 2000);
    const tried = find(judgeByTrials(setup, changes, run), 'camber', 'right').before;
    // Tolerance: 2000 trials know a standard deviation to some 2 %; three such steps.
    expect(Math.abs(tried.standard / standard - 1)).toBeLessThan(0.06);
  });

  test('is looked for backwards at either wheel', () => {
    const band = { least: -0.004, most: 0.004 };
    for (const side of ['left', 'right'] as const) {
      const changes = valueOf(setUpBench({ ...bench, variants: [{ name: 'x', both: {} }] }));
      const [done] = changes.variants;
      const found = done && lengthForScrub(setup, done, side, 'spacer', band);
      if (found === undefined) throw new RangeError('nothing found');
      const ends = [found.best.least, found.best.most].map(
        (length) =>
          find(
            judged(bench, { name: 'x', both: { spacer_mm: 1000 * length } }),
            'scrubRadius',
            side,
          ).after.value,
      );
      expectClose(ends[0] ?? NaN, band.least, 1e-9);
      expectClose(ends[1] ?? NaN, band.most, 1e-9);
    }
  });

  test('is told to be one, with why it should be looked at', () => {
    const alike = garageSetup('one-spacer');
    const [changes] = alike.variants;
    if (changes === undefined) throw new RangeError('no variant');
    expect(leftOut(alike.car, changes)[0]).toContain('nothing is entered that they differ by');
    expect(leftOut(setup.car, changes)[0]).toContain('but for what is entered');
    expect(leftOut(setup.car, changes).join(' ')).toContain('draw a rolling car');
    expect(toHaveChecked(setup.car, changes).join(' ')).toContain('may be bent');
    expect(toHaveChecked(alike.car, changes).join(' ')).not.toContain('may be bent');
  });
});

test('a difference that lays the right axis down is at fault at its own field', () => {
  const bench = withValues(garageBench('slotted-strut-bolts'), {
    lowerIn_mm: 116,
    lowerUp_mm: 180,
    upperIn_mm: 340,
    upperUp_mm: 280,
  });
  expect(setUpBench(bench).ok).toBe(true);
  const steeper = setUpBench(withValues(bench, { crossInclination_deg: -5 }));
  expect(steeper).toMatchObject({
    ok: false,
    faults: [{ path: 'car.values.crossInclination_deg' }],
  });
});
