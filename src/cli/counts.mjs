/**
 * How many tests passed, failed and were skipped.
 *
 * @typedef {{ readonly passed: number, readonly failed: number, readonly skipped: number }} Counts
 */

/** @type {Counts} */
export const NONE = { passed: 0, failed: 0, skipped: 0 };

/**
 * A stage without tests of its own counts as one.
 *
 * @param {boolean} worked
 * @returns {Counts}
 */
export const one = (worked) => (worked ? { ...NONE, passed: 1 } : { ...NONE, failed: 1 });

/**
 * @param {readonly Counts[]} all
 * @returns {Counts}
 */
export const sum = (all) =>
  all.reduce(
    (a, b) => ({
      passed: a.passed + b.passed,
      failed: a.failed + b.failed,
      skipped: a.skipped + b.skipped,
    }),
    NONE,
  );

/**
 * `214 passed, 0 failed`, and the skipped ones only where there are any.
 *
 * @param {Counts} counts
 */
export const line = ({ passed, failed, skipped }) =>
  `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;

/**
 * Counts out of Vitest's JSON report. A file that failed as a whole, without a failed test in it,
 * counts as one failure.
 *
 * @param {any} report
 * @returns {Counts}
 */
export function vitestCounts(report) {
  const brokenFiles = report.testResults.filter(
    (/** @type {any} */ file) =>
      file.status === 'failed' &&
      !file.assertionResults.some((/** @type {any} */ test) => test.status === 'failed'),
  );
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + brokenFiles.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** A busy machine makes a lone test stumble; where more than this share does, something is wrong. */
const STUMBLING_SHARE = 0.01;

/**
 * Counts out of Playwright's JSON report. An error outside any test counts as one failure. What passed only when tried
 * again counts as passed while it is rare (the list names it), and as failed where it is not.
 *
 * @param {any} report
 * @returns {Counts}
 */
export function playwrightCounts({ stats, errors }) {
  const { expected, flaky, unexpected, skipped } = stats;
  const rare = flaky <= STUMBLING_SHARE * (expected + flaky + unexpected);
  return {
    passed: expected + (rare ? flaky : 0),
    failed: unexpected + (rare ? 0 : flaky) + errors.length,
    skipped,
  };
}

/**
 * The counts of a run, given its report and whether its process ended well: never a clean sheet for
 * a run that ended badly, and never one for a run without a test.
 *
 * @param {Counts} counts
 * @param {boolean} worked
 * @returns {Counts}
 */
export function honest(counts, worked) {
  if (counts.failed > 0) return counts;
  const ran = counts.passed + counts.skipped > 0;
  return worked && ran ? counts : { ...counts, failed: 1 };
}
