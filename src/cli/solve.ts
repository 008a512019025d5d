// npm run -s solve -- FILE: solves corner documents, from a file or from standard input.

import type { CornerResult } from '#core/document/corner-result.ts';
import { readCornerDocument } from '#core/document/read-corner-document.ts';
import { solve } from '#core/document/solve.ts';
import type { Outcome } from '#core/fault.ts';
import { answerFile } from './answer-file.ts';

const USAGE = `Usage: npm run -s solve -- [FILE]

Solves corner documents: the geometry of a front corner, the moments about its steering axis, the loads
and the life of its wheel bearing. Without FILE, or with - in its place, reads standard input.

The input is JSON: one document, or a list of them. So is the output, in the same shape, with all numbers
unrounded. The least that a document can be:

  { "side": "left",
    "axis": { "lower_mm": [8, 640, 190], "upper_mm": [-22, 575, 560] },
    "wheel": { "centre_mm": [0, 720, 300], "loadedRadius_mm": 300 } }

All keys, with their units and signs, are in src/core/document/corner-document.ts, those of the output in
corner-result.ts beside it. Vehicle axes are those of ISO 8855: x forward, y to the left, z up.

Where a document is wrong, nothing is solved. Standard error gets one line for each fault,
  document NUMBER: KEY: what is wrong; allowed: what is allowed
and the exit status is 2.`;

await answerFile(USAGE, solved);

function solved(value: unknown): Outcome<CornerResult> {
  const document = readCornerDocument(value);
  return document.ok ? solve(document.value) : document;
}
