import { describe, expect, test } from 'vitest';
import { measuredWords, type MeasuredAsk } from '../../../src/lib/lesson/measured-words.ts';
import { trainingCar } from '../../training-cars.ts';

const words = (ask: MeasuredAsk): string =>
  measuredWords(trainingCar('pelican').left, ask, 'metric');

describe('what measuring comes to is said', () => {
  test('as a reading with its ±', () => {
    expect(words({ of: 'lowerIn', say: 'value' })).toBe('128.0\u202fmm');
    expect(words({ of: 'lowerIn', say: 'plusMinus' })).toBe('3.0\u202fmm');
    expect(words({ of: 'lowerIn', say: 'plusMinus', doubts: 'lowerIn: 1' })).toBe('1.0\u202fmm');
  });

  test('as an interval that lies about the value', () => {
    const [from = NaN, to = NaN] = words({ of: 'scrubRadius', say: 'interval' })
      .replaceAll('−', '-')
      .split(' to ')
      .map(parseFloat);
    const value = parseFloat(words({ of: 'scrubRadius', say: 'value' }));
    const plusMinus = parseFloat(words({ of: 'scrubRadius', say: 'plusMinus' }));
    expect((from + to) / 2).toBeCloseTo(value, 0);
    expect((to - from) / 2).toBeCloseTo(plusMinus, 0);
  });

  test('with odds that never reach certainty', () => {
    expect(words({ of: 'spindleOffset', say: 'chance' })).toBe('more than 99\u202f%');
    expect(parseFloat(words({ of: 'scrubRadius', say: 'chance' }))).toBeLessThan(95);
  });

  test('with shares of readings', () => {
    expect(words({ of: 'scrubRadius', say: 'share', reading: 'lowerIn' })).toMatch(/^\d\d\u202f%$/);
    expect(words({ of: 'scrubRadius', say: 'moves', reading: 'lowerIn' })).toMatch(/mm$/);
  });
});

test.each([
  [{ of: 'camberr', say: 'value' }, 'neither a result nor a reading'],
  [{ of: 'scrubRadius', say: 'share' }, 'allowed are halfRim'],
  [{ of: 'scrubRadius', say: 'value', doubts: 'lowerIn' }, 'readings with their ±'],
  [{ of: 'scrubRadius', say: 'value', doubts: 'lower: 1' }, 'readings with their ±'],
] as const)('a slip of the pen does not build: %o', (ask, message) => {
  expect(() => words(ask)).toThrow(message);
});
