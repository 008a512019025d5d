import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readCornerDocument } from '#core/document/read-corner-document.ts';
import { solve } from '#core/document/solve.ts';
import { faultLine, faultsOf, type Fault } from '#core/fault.ts';
import { gradedTask } from '#exercises/batch/graded.ts';
import { readTask } from '#exercises/batch/task.ts';
import { valueOf } from './core/example-corner.ts';
import { pathOf, placesIn, withValue, type Place } from './guides/json-keys.ts';
import {
  anchorOf,
  blocks,
  chapter,
  codeWords,
  guide,
  tableRows,
  type Row,
} from './guides/markdown.ts';

// Whether the guides are still true of the project. No proof of the calculation: that is for other tests.

const inProject = (path: string): URL => new URL(`../${path}`, import.meta.url);

const solved = (value: unknown) => valueOf(solve(valueOf(readCornerDocument(value))));

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (name) => {
  const text = guide(name);

  test('names files and folders that are there', () => {
    const paths = codeWords(text).filter(
      // Names in capitals stand for any name.
      (word) => /^(\.ci|lessons|seeds|src|tests)\/\S+$/.test(word) && !/[A-Z]{4}|\*/.test(word),
    );
    expect(paths.length).toBeGreaterThan(0);
    expect(paths.filter((path) => !existsSync(inProject(path)))).toEqual([]);
  });

  test('names commands that there are', () => {
    const { scripts } = JSON.parse(guide('package.json')) as { scripts: object };
    const commands = [...text.matchAll(/\bnpm (?:run (?:-s )?([\w:]+)|(start|test)\b)/g)];
    expect(commands.length).toBeGreaterThan(0);
    const names = commands.map(([, run, short]) => run ?? short ?? '');
    expect(names.filter((one) => !(one in scripts))).toEqual([]);
  });

  test('links to files and headings that are there', () => {
    const links = [...text.matchAll(/\]\((?!https?:)([^)#]*)(?:#([^)]*))?\)/g)];
    const broken = links.filter(([, file = '', anchor]) => {
      if (file !== '' && !existsSync(inProject(file))) return true;
      const headings = guide(file.endsWith('.md') ? file : name).match(/^#+ .*$/gm) ?? [];
      return anchor !== undefined && !headings.map(anchorOf).includes(anchor);
    });
    expect(broken.map(([link]) => link)).toEqual([]);
  });
});

test('the formulas live where DEVELOPERS.md says', () => {
  const rows = tableRows(guide('DEVELOPERS.md'), ['what', 'where']);
  expect(rows.length).toBeGreaterThan(0);
  const files = rows.flatMap((row) => codeWords(row['where'] ?? ''));
  expect(files.filter((file) => !existsSync(inProject(`src/core/${file}`)))).toEqual([]);
});

test('what belongs to sheets is where DEVELOPERS.md says', () => {
  const rows = tableRows(guide('DEVELOPERS.md'), ['of a sheet', 'file']);
  const files = rows.flatMap((row) => codeWords(row['file'] ?? ''));
  expect(files.length).toBeGreaterThan(0);
  expect(files.filter((file) => !existsSync(inProject(`src/exercises/sheet/${file}`)))).toEqual([]);
});

test('the corner in README.md is answered as it says', () => {
  const text = chapter(guide('README.md'), '## Your own numbers');
  const [document = ''] = blocks(text, 'json');
  expectAnswer(solved(JSON.parse(document)), text);
});

test('the exercise in README.md is graded as it says', async () => {
  const text = chapter(guide('README.md'), '## Sheets for a class');
  const [document = ''] = blocks(text, 'json');
  const task = valueOf(await readTask(JSON.parse(document), 'work'));
  expectAnswer(valueOf(gradedTask(task)), text);
});

/** Whether an answer has the lines that a chapter shows, in their order. */
function expectAnswer(value: unknown, text: string): void {
  const [shown = ''] = blocks(text, 'text');
  const answer = JSON.stringify(value, null, 2).split('\n');
  let next = 0;
  for (const line of shown.trimEnd().split('\n')) {
    if (line.trim() === '…') continue;
    next = answer.indexOf(line, next) + 1;
    expect(next, `the answer has no line “${line}” here`).toBeGreaterThan(0);
  }
}

describe('the corner document in DEVELOPERS.md', () => {
  const text = chapter(guide('DEVELOPERS.md'), '## The corner document');
  const [json = ''] = blocks(text, 'json');
  const example: unknown = JSON.parse(json);
  const byAngles = withValue(withValue(example, ['change'], undefined), ['axis'], {
    inclination_deg: 12,
    caster_deg: 3,
    scrubRadius_mm: -8,
    trail_mm: 15,
  });

  const input = tableRows(text, ['key', 'range', 'meaning and sign', 'default']);
  const angles = tableRows(text, ['key', 'range', 'meaning and sign']);
  const results = tableRows(text, ['key', 'meaning and sign', 'there only with']);

  test('has each key of its example in its table, and each key of the table in its example', () => {
    expect(input.map(keyOf)).toEqual(keysOf(example));
    expect(angles.map(keyOf)).toEqual(keysOf(byAngles).filter((key) => key.startsWith('axis.')));
  });

  test('has each key of a result in its table, and no others', () => {
    expect(results.map(keyOf)).toEqual(keysOf(solved(example)));
  });

  test('says which members of a result need which of a document', () => {
    for (const need of ['forces', 'steering', 'hub']) {
      const without = keysOf(solved(withValue(example, [need], undefined)));
      const gone = results.filter((row) => row['there only with']?.includes(`\`${need}\``));
      expect(keysOf(solved(example)).filter((key) => !without.includes(key))).toEqual(
        gone.map(keyOf),
      );
    }
  });

  const rows = [
    ...input.map((row) => ({ row, key: keyOf(row), document: example })),
    ...angles.map((row) => ({ row, key: keyOf(row), document: byAngles })),
  ];

  const ranged = rows.filter(({ row }) => !row['range']?.startsWith('by its kind'));

  test.each(ranged)('takes $key in the range that its table says', ({ row, key, document }) => {
    const place = placeOf(document, key);
    const { range = '' } = row;
    const words = range.startsWith('`"');
    const allowed = words ? range.replaceAll('`', '') : rangeOf(range).join(' to ');
    const at = (value: unknown): readonly Fault[] =>
      faultsOf(readCornerDocument(withValue(document, place, value))).filter(
        (fault) => fault.path.startsWith(pathOf(place)) && fault.allowed.includes(allowed),
      );
    if (words) {
      expect(at('nonsense')).toHaveLength(1);
      return;
    }
    const [least, most] = rangeOf(range);
    const asValue = (x: number) => (/^(point|vector|direction)/.test(range) ? [x, 0, 0] : x);
    expect([least - 0.001, most + 0.001].map((x) => at(asValue(x)).length)).toEqual([1, 1]);
    expect([least, most].flatMap((x) => at(asValue(x)))).toEqual([]);
  });

  test.each(rows)('takes $key, left out, as its table says', ({ row, key, document }) => {
    const place = placeOf(document, key);
    const without = withValue(document, place, undefined);
    const { default: value = '' } = row;
    if (value === '') expect(faultsOf(readCornerDocument(without))).not.toEqual([]);
    else if (Number.isFinite(Number(value)))
      expect(solved(without)).toEqual(solved(withValue(document, place, Number(value))));
    else expect(faultsOf(readCornerDocument(without))).toEqual([]);
  });

  test('shows faults as solve tells them', () => {
    const wrong = JSON.parse(
      json
        .replace('"loadedRadius_mm": 292', '"loadedRadius_mm": 0.292')
        .replace('spacer_mm', 'spacer'),
    ) as unknown;
    const lines = faultsOf(readCornerDocument(wrong)).map(
      (fault) => `document 1: ${faultLine(fault)}`,
    );
    expect(blocks(text, 'text')).toEqual([`${lines.join('\n')}\n`]);
  });
});

const keyOf = (row: Row): string => (row['key'] ?? '').replaceAll('`', '');

const keysOf = (value: unknown): readonly string[] => [...placesIn(value).keys()];

function placeOf(document: unknown, key: string): Place {
  const place = placesIn(document).get(key);
  if (place === undefined) throw new Error(`the example has no ${key}`);
  return place;
}

function rangeOf(range: string): readonly [least: number, most: number] {
  const [, least, most] = /(-?[\d.]+) to (-?[\d.]+)/.exec(range) ?? [];
  return [Number(least), Number(most)];
}
