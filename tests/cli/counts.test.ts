import { describe, expect, test } from 'vitest';
import { honest, line, one, playwrightCounts, sum, vitestCounts } from '../../src/cli/counts.mjs';

const vitestReport = {
  numPassedTests: 5,
  numFailedTests: 1,
  numPendingTests: 2,
  numTodoTests: 1,
  testResults: [
    { status: 'passed', assertionResults: [{ status: 'passed' }] },
    { status: 'failed', assertionResults: [{ status: 'passed' }, { status: 'failed' }] },
  ],
};

describe('counts of tests', () => {
  test('come out of a Vitest report', () => {
    expect(vitestCounts(vitestReport)).toEqual({ passed: 5, failed: 1, skipped: 3 });
  });

  test('take a file that could not even be loaded for one failure', () => {
    const broken = { status: 'failed', assertionResults: [] };
    const report = { ...vitestReport, testResults: [...vitestReport.testResults, broken] };
    expect(vitestCounts(report).failed).toBe(2);
  });

  test('come out of a Playwright report', () => {
    const stats = { expected: 4, unexpected: 1, flaky: 0, skipped: 2 };
    expect(playwrightCounts({ stats, errors: [{ message: 'no server' }] })).toEqual({
      passed: 4,
      failed: 2,
      skipped: 2,
    });
  });

  test('take a rare second try for a pass, and many for failures', () => {
    const stats = { expected: 297, unexpected: 0, flaky: 3, skipped: 0 };
    const rare = playwrightCounts({ stats, errors: [] });
    expect(rare).toEqual({ passed: 300, failed: 0, skipped: 0 });
    const often = playwrightCounts({ stats: { ...stats, expected: 296, flaky: 4 }, errors: [] });
    expect(often).toEqual({ passed: 296, failed: 4, skipped: 0 });
  });

  test('add up', () => {
    expect(line(sum([one(true), one(false), { passed: 10, failed: 1, skipped: 0 }]))).toBe(
      '11 passed, 2 failed',
    );
  });

  test('mention skipped tests only where there are any', () => {
    expect(line({ passed: 1, failed: 0, skipped: 2 })).toBe('1 passed, 0 failed, 2 skipped');
  });
});

describe('a run', () => {
  const good = { passed: 3, failed: 0, skipped: 0 };

  test('that ended well keeps its counts', () => {
    expect(honest(good, true)).toEqual(good);
  });

  test('that ended badly has a failure, even if no test says so', () => {
    expect(honest(good, false)).toEqual({ passed: 3, failed: 1, skipped: 0 });
  });

  test('without a test has a failure', () => {
    expect(honest({ passed: 0, failed: 0, skipped: 0 }, true).failed).toBe(1);
  });

  test('with failed tests counts no further one for ending badly', () => {
    expect(honest({ passed: 3, failed: 2, skipped: 0 }, false).failed).toBe(2);
  });
});
