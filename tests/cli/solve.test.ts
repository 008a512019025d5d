import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { solve } from '#core/document/solve.ts';
import { valueOf } from '../core/example-corner.ts';
import { BARE_DOCUMENT, GOOD_DOCUMENT } from '../core/document/good-document.ts';

const SCRIPT = fileURLToPath(new URL('../../src/cli/solve.ts', import.meta.url));

const run = (words: readonly string[], input = '') => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [SCRIPT, ...words], {
    input,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
};

let folder = '';
const inFolder = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'solve-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe('solve', () => {
  test('answers one document with one result, unrounded', () => {
    const file = inFolder('one.json', JSON.stringify(GOOD_DOCUMENT));
    const { status, stdout, stderr } = run([file]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toStrictEqual(valueOf(solve(GOOD_DOCUMENT)));
  });

  test('answers a list with a list, in its order', () => {
    const { status, stdout } = run([], JSON.stringify([BARE_DOCUMENT, GOOD_DOCUMENT]));
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toStrictEqual(
      [BARE_DOCUMENT, GOOD_DOCUMENT].map((document) => valueOf(solve(document))),
    );
  });

  test('answers an empty list with an empty list', () => {
    expect(run(['-'], '[]')).toEqual({ status: 0, stdout: '[]\n', stderr: '' });
  });

  test('reads past a byte order mark', () => {
    expect(run([], `\uFEFF${JSON.stringify(BARE_DOCUMENT)}`).status).toBe(0);
  });

  test('says how it is used', () => {
    const { status, stdout, stderr } = run(['--help']);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Usage: npm run -s solve -- \[FILE\]\n/);
    expect(stderr).toBe('');
  });
});

describe('what solve refuses has exit status 2, nothing on standard output and', () => {
  const refusal = (words: readonly string[], input = '') => {
    const { status, stdout, stderr } = run(words, input);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    return stderr;
  };

  test('one line for each fault, with the document’s number', () => {
    const { wheel } = GOOD_DOCUMENT;
    const bad = { ...GOOD_DOCUMENT, wheel: { ...wheel, loadedRadius_mm: 0.3, toe_deg: null } };
    const worse = { ...GOOD_DOCUMENT, rotation_deg: 'left' };
    const lines = refusal([], JSON.stringify([BARE_DOCUMENT, bad, worse])).split('\n');
    expect(lines).toEqual([
      'document 2: wheel.toe_deg: is null; allowed: a number from -30 to 30 degrees',
      'document 2: wheel.loadedRadius_mm: is 0.3, which looks like metres; allowed: a number from 50 to 2000 mm',
      'document 3: rotation_deg: is the text "left"; allowed: a number from -80 to 80 degrees',
      '',
    ]);
  });

  test('a line for a document that is well written but cannot be solved', () => {
    const steering = { ...GOOD_DOCUMENT.steering, inner_mm: [-120, 570, 215] };
    const document = { ...GOOD_DOCUMENT, steering, rotation_deg: 60 };
    expect(refusal([], JSON.stringify(document))).toMatch(/^document 1: rotation_deg: [^\n]*\n$/);
  });

  test('a word about what is no document', () => {
    expect(refusal([], '3')).toMatch(/^document 1: the whole document: is 3; allowed: an object/);
  });

  test('line and column of what is not JSON', () => {
    const file = inFolder('bad.json', '{\n  "side": "left",\n}');
    expect(refusal([file])).toBe(
      `${file} is not JSON: line 3, column 1: found }; allowed: a key in double quotes\n`,
    );
    expect(refusal([], '')).toBe(
      'standard input is not JSON: line 1, column 1: found the end; allowed: a value\n',
    );
  });

  test('a plain word about a missing file and about a folder', () => {
    expect(refusal([join(folder, 'none.json')])).toMatch(/^there is no file .*none\.json\n$/);
    expect(refusal([folder])).toMatch(/ is a folder, not a file\n$/);
  });

  test('its usage for an unknown option or two files', () => {
    expect(refusal(['--fast'])).toMatch(/'--fast'[^]*\n\nUsage: npm run -s solve/);
    expect(refusal(['a.json', 'b.json'])).toMatch(/^one file at a time, please\n\nUsage: /);
  });
});
