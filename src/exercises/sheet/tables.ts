import type { ExerciseKind } from '../registry.ts';
import type { Cell } from './csv.ts';
import type { MarkedResult } from './mark-result.ts';

type Table = readonly (readonly Cell[])[];

/** One row a student, with the marks of each item: for the school's own system. */
export function marksTable(
  kinds: readonly ExerciseKind[],
  results: readonly MarkedResult[],
): Table {
  const items = kinds.map(({ title }, i) => `${i + 1} ${title}`);
  return [
    ['number', ...items, 'marks', 'of', 'percent', 'hints'],
    ...results.map(({ result, items: marked, earned, possible }) => [
      result.number,
      ...marked.map((item) => inHundredths(item.earned)),
      inHundredths(earned),
      inHundredths(possible),
      Math.round((1000 * earned) / possible) / 10,
      result.items.reduce((sum, { hints }) => sum + hints.length, 0),
    ]),
  ];
}

/** One row for each field of each attempt, with what was typed: for whoever wants to look closer. */
export function answersTable(
  kinds: readonly ExerciseKind[],
  results: readonly MarkedResult[],
): Table {
  const head = ['number', 'item', 'kind', 'attempt', 'counts', 'part', 'asked for', 'typed'];
  const rows = results.flatMap(({ result, items }) =>
    items.flatMap(({ attempts, counted }, position) =>
      attempts.flatMap((attempt, a) =>
        attempt.parts.map((part, p) => [
          result.number,
          position + 1,
          kinds[position]?.id ?? '',
          a + 1,
          attempt === counted ? 'yes' : 'no',
          p + 1,
          kinds[position]?.labels[p] ?? '',
          part.typed.text,
          part.unit,
          part.direction ?? '',
          part.verdict,
          part.slip?.id ?? '',
          part.hinted ? 'yes' : 'no',
          inHundredths(part.earned),
          inHundredths(part.possible),
        ]),
      ),
    ),
  );
  return [
    [...head, 'unit if none is typed', 'direction', 'verdict', 'slip', 'hint', 'marks', 'of'],
    ...rows,
  ];
}

/** Marks as they are written down: hundredths are fine enough for any school. */
export const inHundredths = (marks: number): number => Math.round(100 * marks) / 100;
