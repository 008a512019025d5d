// npm run -s judge -- FILE: judges the changes of bench documents, from a file or from standard input.

import type { Outcome } from '#core/fault.ts';
import { benchReport, type BenchReport } from '#core/judgement/bench-report.ts';
import { readBench } from '#core/judgement/read-bench.ts';
import { answerFile } from './answer-file.ts';

const USAGE = `Usage: npm run -s judge -- [FILE]

Judges changes to a car: each result before and after, with the interval that holds it in about 95 of 100
cases, what gets better and worse, what is not known, and what to have checked. Never whether a change is safe.
Without FILE, or with - in its place, reads standard input.

The input is JSON: one bench document, as the page at /bench keeps it, or a list of them. So is the output, in
the same shape. Examples are in seeds/garage/; all keys, with their units and signs, are in
src/core/judgement/bench-document.ts and inputs.ts, those of what left and right differ by as the car stands in
cross-inputs.ts, those of the output in bench-report.ts beside them.

Where a document is wrong, nothing is judged. Standard error gets one line for each fault,
  document NUMBER: KEY: what is wrong; allowed: what is allowed
and the exit status is 2.`;

await answerFile(USAGE, judged);

function judged(value: unknown): Outcome<BenchReport> {
  const document = readBench(value);
  return document.ok ? benchReport(document.value) : document;
}
