import { describe, expect, test } from 'vitest';
import type { Judgement } from '#core/judgement/finding.ts';
import { isCross } from '#core/judgement/cross-inputs.ts';
import { benchOfCorner, benchOfTrainingCar, garageBench } from '#core/judgement/start.ts';
import { solve } from '#core/document/solve.ts';
import { CAR_FILES } from '../../training-cars.ts';
import { garageBench as scenario } from '../../garage-benches.ts';
import { valueOf } from '../example-corner.ts';
import { expectClose } from '../near.ts';
import { find, judged, setUp } from './judged-bench.ts';

const linnet = valueOf(benchOfTrainingCar(CAR_FILES.get('linnet.json')));

describe('a training car', () => {
  test('has no doubt as it stands, and the numbers of its own document', () => {
    const judgement = judged(linnet, { name: 'nothing', both: {} });
    const { geometry } = valueOf(solve(linnet.car.corner));
    for (const [id, own] of [
      ['scrubRadius', geometry.scrubRadius_mm / 1000],
      ['spindleOffset', geometry.spindleOffset_mm / 1000],
      ['trail', geometry.trail_mm / 1000],
    ] as const) {
      const { before } = find(judgement, id);
      expectClose(before.value, own, 1e-9);
      expect(before.standard).toBe(0);
    }
  });

  test('changes as solving its document with the change does', () => {
    const change = { spacer_mm: 15, camberAtCarrier_deg: -1 };
    const judgement = judged(linnet, { name: 'spacer', both: change });
    const { geometry, hub } = valueOf(solve({ ...linnet.car.corner, change }));
    expectClose(find(judgement, 'scrubRadius').after.value, geometry.scrubRadius_mm / 1000, 1e-9);
    expectClose(find(judgement, 'hubLife').after.value, 1e6 * (hub?.L10_Mrev ?? NaN), 1e-9);
  });

  test('loses its negative scrub radius to a thick spacer, and that is known', () => {
    const [sign] = judged(linnet, { name: 'spacer', both: { spacer_mm: 20 } }).scrub;
    expect(sign).toMatchObject({
      before: { sign: 'negative', known: true },
      after: { sign: 'positive', known: true },
      flips: 'yes',
    });
  });
});

describe('nothing done', () => {
  test('changes nothing, however little is known', () => {
    const { findings } = judged(scenario('nothing-measured'), { name: 'nothing', both: {} });
    expect(findings.length).toBeGreaterThan(20);
    for (const { difference, ratio } of findings) {
      expect(difference).toMatchObject({ value: 0, standard: 0 });
      if (ratio !== undefined) expectClose(ratio.value, 1, 1e-12);
    }
  });
});

describe('left and right', () => {
  const bench = scenario('hatchback-spacers');
  const spacer = { spacer_mm: 12 };

  test('may be told apart or together: the results are the same', () => {
    const together = judged(bench, { name: 'x', both: spacer });
    const apart = judged(bench, { name: 'x', left: spacer, right: spacer });
    for (const finding of together.findings) {
      for (const place of finding.place === 'axle' ? ['axle' as const] : ['left' as const]) {
        const other = find(apart, finding.id, place);
        expectClose(other.after.value, finding.after.value, 1e-9);
        expectClose(other.after.standard, finding.after.standard, 1e-6);
      }
    }
    const right = find(apart, 'scrubRadius', 'right');
    expectClose(right.after.value, find(apart, 'scrubRadius').after.value, 1e-9);
    expectClose(
      find(apart, 'brakeMoment', 'right').after.value,
      -find(apart, 'brakeMoment').after.value,
      1e-9,
    );
  });

  test('alike, they leave the steering wheel still when both brake', () => {
    const both = judged(bench, { name: 'x', both: spacer });
    expect(Math.abs(find(both, 'brakingRimForce', 'axle').after.value)).toBeLessThan(1e-9);
  });

  test('unlike, they pull: a spacer on the left against one on the right', () => {
    const onLeft = judged(bench, { name: 'x', left: spacer, right: {} });
    const onRight = judged(bench, { name: 'x', left: {}, right: spacer });
    const pull = find(onLeft, 'brakingRimForce', 'axle').after.value;
    // More positive scrub radius on the left: braking turns that wheel, and with it the steering wheel, to the left.
    expect(pull).toBeGreaterThan(0.1);
    expectClose(find(onRight, 'brakingRimForce', 'axle').after.value, -pull, 1e-9);
  });
});

describe('split friction', () => {
  test('turns the steering wheel to where the moments turn the wheels, whichever side the rack lies', () => {
    for (const file of CAR_FILES.values()) {
      const { findings } = judged(valueOf(benchOfTrainingCar(file)), {
        name: 'x',
        both: { spacer_mm: 30 },
      });
      const judgement = { findings } as Judgement;
      const steering = find(judgement, 'splitSteering', 'axle').after.value;
      expect(Math.sign(find(judgement, 'splitRimForce', 'axle').after.value)).toBe(
        Math.sign(steering),
      );
      expect(steering).toBeGreaterThan(0);
    }
  });
});

describe('what is not known', () => {
  const [strut, spacer] = [
    { name: 'x', suspension: 'strut', drive: 'front', tyre: '195/65 R15 91H' } as const,
    { name: 'x', both: { spacer_mm: 20 } },
  ];

  test('is filled in by what is typical, and said to be so', () => {
    const { known } = setUp(valueOf(garageBench(strut)), spacer);
    expect(new Set(Object.values(known).map(({ source }) => source))).toEqual(new Set(['typical']));
    for (const [id, { plusMinus, value }] of Object.entries(known)) {
      expect(value, id).not.toBeNaN();
      // Left and right are alike until somebody says what they differ by.
      if (isCross(id)) {
        expect({ value, plusMinus }).toEqual({ value: 0, plusMinus: 0 });
        continue;
      }
      // A reach that nobody gave belongs to threads that nothing is said about.
      expect(plusMinus, id).toBeGreaterThan(0);
    }
  });

  test('leaves the sign of the scrub radius open, and measuring settles it', () => {
    const bench = valueOf(garageBench(strut));
    expect(judged(bench, spacer).scrub[0]).toMatchObject({ flips: 'unknown' });
    const measured = (value: number, plusMinus: number) =>
      ({ value, plusMinus, source: 'measured' }) as const;
    const values = {
      halfRim_mm: measured(88, 1.5),
      lowerIn_mm: measured(118, 3),
      lowerUp_mm: measured(182, 3),
      inclination_deg: { value: 13.2, plusMinus: 0.3, source: 'sheet' },
      camber_deg: { value: -0.4, plusMinus: 0.1, source: 'sheet' },
    } as const;
    const known = { ...bench, car: { ...bench.car, values } };
    expect(judged(known, spacer).scrub[0]).toMatchObject({ flips: 'yes' });
  });

  test('is left out of the results: threads without a fixing, a load without a load index', () => {
    const bench = valueOf(garageBench({ ...strut, tyre: '195/65 R15' }));
    const ids = judged(bench, spacer).findings.map(({ id }) => id);
    expect(ids).not.toContain('engagement');
    expect(ids).not.toContain('loadShare');
    expect(ids).toContain('scrubRadius');
  });

  test('names the measurement that matters most first', () => {
    const { weights } = find(judged(valueOf(garageBench(strut)), spacer), 'scrubRadius');
    expect(weights[0]?.input).toBe('lowerIn_mm');
    const shares = weights.map(({ share }) => share);
    expect(shares).toEqual(shares.toSorted((a, b) => b - a));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeGreaterThan(0.99);
  });
});

describe('a corner of one’s own', () => {
  const about = {
    name: 'own',
    suspension: 'strut',
    drive: 'front',
    tyre: '195/65 R15 91H',
  } as const;
  const spacer = { name: 'x', both: { spacer_mm: 10 } };

  test('may be a right one: its mirror image stands for the left', () => {
    const files = CAR_FILES.get('linnet.json') as Record<'left' | 'right', object>;
    const [left, right] = (['left', 'right'] as const).map((side) =>
      judged(valueOf(benchOfCorner(files[side], about)), spacer),
    );
    if (left === undefined || right === undefined) throw new RangeError('two corners');
    for (const finding of left.findings)
      expectClose(find(right, finding.id, finding.place).after.value, finding.after.value, 1e-9);
  });

  test('may have its axis by angles, and neither tie rod nor hub', () => {
    const bare = {
      side: 'left',
      axis: { inclination_deg: 13, caster_deg: 3.3, scrubRadius_mm: -8, trail_mm: 15 },
      wheel: { centre_mm: [0, 745, 292], loadedRadius_mm: 292 },
    };
    const judgement = judged(valueOf(benchOfCorner(bare, about)), spacer);
    expectClose(find(judgement, 'scrubRadius').before.value, -0.008, 1e-9);
    expectClose(find(judgement, 'scrubRadius').after.value, 0.002, 1e-9);
    expectClose(find(judgement, 'trail').before.value, 0.015, 1e-9);
    expect(find(judgement, 'scrubRadius').before.standard).toBe(0);
    // The hub is a typical one, with a wide ±.
    expect(find(judgement, 'outboardMeanLoad').before.standard).toBeGreaterThan(100);
  });
});
