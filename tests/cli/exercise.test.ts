import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { plain } from '#exercises/phrase.ts';
import { loadKind } from '#exercises/registry.ts';
import { codeOf } from '#exercises/sheet/short-code.ts';
import { resultOf, SHEET, variant } from '../exercises/sheet/a-sheet.ts';

const SCRIPT = fileURLToPath(new URL('../../src/cli/exercise.ts', import.meta.url));

const run = (words: readonly string[], input: unknown = '') => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [SCRIPT, ...words], {
    input: typeof input === 'string' ? input : JSON.stringify(input),
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
};

function answer(command: string, input: unknown): unknown {
  const { status, stdout, stderr } = run([command], input);
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  return JSON.parse(stdout);
}

const TASK = { kind: 'spacer-scrub', seed: 'group-a' };
const exercise = (await loadKind('spacer-scrub')).exercise('group-a');

interface Written {
  readonly question: string;
  readonly parts: readonly { readonly answer?: number; readonly solution?: string }[];
}

describe('exercise', () => {
  test('draws without giving anything away, and answers with all of it', () => {
    const drawn = answer('draw', TASK) as Written;
    expect(drawn.question).toBe(plain(exercise.question()));
    expect(drawn.parts.flatMap((part) => Object.keys(part))).not.toContain('answer');
    const [answered] = answer('answer', [TASK]) as Written[];
    expect(answered?.parts.map((part) => part.answer)).toEqual([
      expect.closeTo(9, 9),
      expect.closeTo(20, 9),
    ]);
    expect(answered?.parts[0]?.solution).toContain('711\u202fmm − 702\u202fmm = 9\u202fmm');
  });

  test('grades numbers and texts, in a list in its order', () => {
    const marks = answer('grade', [
      { ...TASK, entries: [9, '+2 cm'] },
      { ...TASK, entries: [-9, 2] },
      { ...TASK, entries: [null, null] },
    ]) as { earned: number; parts: { verdict: string }[] }[];
    expect(marks.map(({ earned, parts }) => [earned, ...parts.map((p) => p.verdict)])).toEqual([
      [2, 'right', 'right'],
      [1, 'slip', 'follow-on'],
      [0, 'missing', 'missing'],
    ]);
  });

  test('draws the variants of a sheet, and marks what comes back', () => {
    const { variants } = answer('draw', { sheet: SHEET, numbers: [3, 8] }) as {
      variants: { number: number; exercises: Written[] }[];
    };
    expect(variants.map(({ number }) => number)).toEqual([3, 8]);
    expect(variants[1]?.exercises.map(({ question }) => question)).toEqual(
      variant(8).map((one) => plain(one.question())),
    );
    const { students, refused } = answer('grade', {
      sheet: SHEET,
      results: [codeOf(resultOf(8)), resultOf(3), { ...resultOf(4), number: 5 }],
    }) as { students: object[]; refused: object[] };
    expect(students).toMatchObject([
      { number: 3, earned: 10, possible: 10 },
      { number: 8, earned: 10, possible: 10 },
    ]);
    expect(refused).toMatchObject([{ name: 'results[2]', why: 'tampered', number: 5 }]);
  });

  test('says how it is used', () => {
    const { status, stdout } = run(['--help']);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Usage: npm run -s exercise -- COMMAND \[FILE\]\n/);
  });
});

describe('what exercise refuses has exit status 2, nothing on standard output and', () => {
  const refusal = (words: readonly string[], input: unknown = '') => {
    const { status, stdout, stderr } = run(words, input);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    return stderr;
  };

  test('one line for each fault, with the document’s number', () => {
    const documents = [
      { ...TASK, entries: ['bananas', '12'] },
      { kind: 'spacer', seed: '' },
      { ...TASK, version: 7, entries: [] },
      { sheet: { ...SHEET, title: '' }, results: [] },
      3,
    ];
    expect(refusal(['grade'], documents).trimEnd().split('\n')).toEqual([
      expect.stringMatching(/^document 1: entries\[0\]: cannot be read: “bananas” .*; allowed: /),
      expect.stringMatching(/^document 1: entries\[1\]: .*Choose inboard or outboard; allowed: /),
      expect.stringMatching(/^document 2: seed: is empty; allowed: /),
      expect.stringMatching(/^document 2: kind: is the text "spacer"; allowed: /),
      'document 3: version: is 7, which is not there; allowed: 1 for spacer-scrub',
      'document 4: sheet.title: is empty; allowed: a text of 1 to 120 letters',
      'document 5: the whole document: is 3; allowed: an object with the keys kind, version, seed, entries',
    ]);
  });

  test('a word about what belongs to another command', () => {
    expect(refusal(['draw'], { ...TASK, entries: [] })).toMatch(
      /document 1: entries: is not known/,
    );
    expect(refusal(['draw'], { sheet: SHEET, numbers: [0] })).toMatch(
      /document 1: numbers\[0\]: is 0; allowed: a whole number from 1 to 999999/,
    );
  });

  test('its usage for no command, another one, or two files', () => {
    expect(refusal([])).toMatch(/^what is to be done\?; allowed: draw, answer, grade\n\nUsage: /);
    expect(refusal(['mark'])).toMatch(/^there is no command mark; allowed: /);
    expect(refusal(['draw', 'a', 'b'])).toMatch(/^one file at a time, please\n\nUsage: /);
  });
});
