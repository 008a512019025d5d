import { describe, expect, test } from 'vitest';
import {
  isPredictionSlip,
  slipOf,
  slipValue,
  type Outcomes,
  type PredictionSlipId,
} from '../../../src/lib/lesson/prediction-slips.ts';

/** A spacer of 20 mm on a scrub radius of 10 mm. */
const OUTCOMES: Outcomes = { of: 'scrubRadius', before: 0.01, after: 0.03 };

const ENDS: readonly (readonly [PredictionSlipId, number, string])[] = [
  ['unchanged', 0.01, 'before the change'],
  ['wrongWay', -0.01, 'the wrong way'],
  ['doubled', 0.05, 'twice'],
  ['halved', 0.02, 'half'],
  ['onlyTheChange', 0.02, 'the change alone'],
  ['otherSide', -0.03, 'the other way round'],
];

describe.each(ENDS)('the wrong road “%s”', (id, end, words) => {
  test('ends where somebody comes out who takes it', () => {
    expect(slipValue(id, OUTCOMES)).toBeCloseTo(end, 12);
  });

  test('is recognised within the tolerance, and called by the name of the quantity', () => {
    const said = slipOf(end + 0.0005, [id], OUTCOMES, 0.0006);
    expect(said).toContain(words);
    expect(said).toContain('scrub radius');
    expect(slipOf(end + 0.0007, [id], OUTCOMES, 0.0006)).toBe('');
  });
});

describe('of a part of it only', () => {
  test.each([
    // Camber −1.5° more on an included angle of 12.5°, which stays.
    ['withTheCamber', { of: 'includedAngle', before: 12.5, after: 12.5, withTheCamber: 11 }, 11],
    ['oneWheel', { of: 'selfReturn', before: 0, after: -42 }, -21],
    ['wholeAngle', { of: 'driveMoment', before: -83, after: -53 }, -23],
    ['twiceAll', { of: 'clampNeeded', before: 16, after: 27 }, 32],
  ] as const)(
    '“%s” ends where somebody comes out who takes it, and is told so',
    (id, outcomes, end) => {
      expect(slipValue(id, outcomes)).toBe(end);
      expect(slipOf(end, [id], outcomes, 0.5)).toMatch(/camber|one wheel|whole angle|doubles all/);
    },
  );
});

describe('of a moment', () => {
  /** A force at the wheel centre, and what it would make at the road. */
  const drive: Outcomes = { of: 'driveMoment', before: 0, after: -104, atOtherLever: -6 };
  const brake: Outcomes = { of: 'brakeMoment', before: 0, after: -20, atOtherLever: 138 };

  test('the lever of the other height is recognised, and the answer says what it would be right for', () => {
    expect(slipOf(-6, ['otherLever'], drive, 0.5)).toMatch(/scrub radius.*moment of the driving/);
    expect(slipOf(138, ['otherLever'], brake, 0.5)).toMatch(/spindle offset.*inside the car/);
    expect(slipValue('otherLever', OUTCOMES)).toBeNaN();
  });

  test('of both wheels at the other height says who holds the torque', () => {
    const both: Outcomes = { of: 'steeringMoment', before: 0, after: 220, atOtherLever: -32 };
    expect(slipOf(-32, ['otherLever'], both, 1)).toMatch(/brake on the carrier.*shaft/);
  });

  test('millimetres in the place of metres are recognised', () => {
    expect(slipOf(-104_000, ['inMillimetres'], drive, 2)).toContain('in metres');
  });
});

describe('of the life of a bearing', () => {
  /** Twice the load, nine tenths of the way straight ahead, rows of 200 and 300 million revolutions. */
  const life: Outcomes = {
    of: 'hubLife',
    before: 1e9,
    after: 1.2e8,
    rolling: { loads: 2, straight: 0.9, rows: [3e8, 2e8], withItsBends: 7e8 },
  };

  test.each([
    ['inStep', 5e8, 'in step'],
    ['squared', 2.5e8, 'square'],
    ['byShare', 9e8, 'share of the distance'],
    ['halfLeft', 5e8, 'half'],
    ['withItsBends', 7e8, 'bends'],
    ['shorterRow', 2e8, 'weaker row'],
    ['meanOfRows', 2.5e8, 'mean'],
  ] as const)(
    '“%s” ends where somebody comes out who takes it, and is told so',
    (id, end, words) => {
      expect(slipValue(id, life)).toBeCloseTo(end, 3);
      expect(slipOf(end, [id], life, 1e6)).toContain(words);
      expect(slipOf(end, [id], life, 1e6)).toContain('rating life of both rows together');
      expect(slipValue(id, { ...life, rolling: undefined })).toSatisfy(
        id === 'halfLeft' ? Number.isFinite : Number.isNaN,
      );
    },
  );
});

test('only the wrong roads of the lesson are recognised', () => {
  expect(slipOf(0.01, ['doubled'], OUTCOMES, 0.0006)).toBe('');
  expect(slipOf(0.01, [], OUTCOMES, 0.0006)).toBe('');
});

test('where two wrong roads end in one place, the one named first speaks', () => {
  expect(slipOf(0.02, ['onlyTheChange', 'halved'], OUTCOMES, 0.0006)).toContain('alone');
  expect(slipOf(0.02, ['halved', 'onlyTheChange'], OUTCOMES, 0.0006)).toContain('half');
});

test('only known names are wrong roads', () => {
  expect(isPredictionSlip('doubled')).toBe(true);
  expect(isPredictionSlip('toString')).toBe(false);
});

describe('of both wheels together', () => {
  const yaw: Outcomes = {
    of: 'yawMoment',
    before: 0,
    after: 3000,
    sides: { left: 3375, right: -375 },
  };

  test.each([
    ['addedUp', 3750, 'one of them counts against the other'],
    ['leftAlone', 3375, 'left wheel alone'],
    ['wholeTrack', 6000, 'whole track'],
  ] as const)('the wrong road “%s” is recognised', (id, end, words) => {
    expect(slipValue(id, yaw)).toBe(end);
    expect(slipOf(end, [id], yaw, 60)).toContain(words);
    expect(slipOf(end, [id], yaw, 60)).toContain('yaw moment');
  });

  test('what one wheel brings is not known of a single corner', () => {
    expect(slipValue('addedUp', OUTCOMES)).toBeNaN();
    expect(slipValue('leftAlone', OUTCOMES)).toBeNaN();
  });
});
