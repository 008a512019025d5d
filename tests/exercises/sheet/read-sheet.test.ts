import { describe, expect, test } from 'vitest';
import { faultLine, faultsOf } from '#core/fault.ts';
import { fingerprintOf } from '#exercises/sheet/fingerprint.ts';
import { readSheet } from '#exercises/sheet/read-sheet.ts';
import { sheetKinds } from '#exercises/sheet/sheet-kinds.ts';
import { sheetFragment, sheetIn } from '#exercises/sheet/sheet-link.ts';
import { valueOf } from '../../core/example-corner.ts';
import { SHEET } from './a-sheet.ts';

const [first] = SHEET.items;
if (!first) throw new Error('a sheet without items');

const lines = (value: unknown): readonly string[] => faultsOf(readSheet(value)).map(faultLine);

describe('a sheet', () => {
  test('is read as it was written', () => {
    expect(valueOf(readSheet(JSON.parse(JSON.stringify(SHEET))))).toStrictEqual(SHEET);
  });

  test('may leave out note, attempts, hints and tolerance', () => {
    const { note: _, ...bare } = SHEET;
    const items = [{ kind: 'spacer-scrub', version: 1, marks: 2 }];
    expect(valueOf(readSheet({ ...bare, items }))).toMatchObject({
      note: '',
      items: [{ attempts: 1, tolerance: 'usual' }],
    });
  });

  test.each([
    [{ title: ' ' }, 'title: is empty; allowed: a text of 1 to 120 letters'],
    [{ seed: 'Week 3' }, 'seed: is the text "Week 3"; allowed: up to 40 small letters, digits and'],
    [{ items: [] }, 'items: has 0 members; allowed: a list of 1 or more'],
    [{ items: [{ ...first, kind: 'x' }] }, 'items[0].kind: is the text "x"; allowed: the id of'],
    [
      { items: [{ ...first, marks: 0 }] },
      'items[0].marks: is 0; allowed: a number from 0.5 to 100',
    ],
    [{ items: [{ ...first, attempts: 1.5 }] }, 'items[0].attempts: is 1.5; allowed: a whole'],
    [{ items: [{ ...first, tolerance: 'none' }] }, 'items[0].tolerance: is the text "none"'],
    [{ items: [{ ...first, mark: 1 }] }, 'items[0].mark: is not known here; did you mean marks?'],
    [{ version: 2 }, 'version: is 2; allowed: 1'],
    [
      { answers: 'never' },
      'items[1].attempts: is 3, but nothing is told after an attempt; allowed: 1, or answers shown',
    ],
  ])('with %j is refused at the place of the mistake', (change, line) => {
    expect(lines({ ...SHEET, ...change })).toEqual([expect.stringContaining(line)]);
  });

  test('that is no object has one fault, and one with several mistakes has them all', () => {
    expect(lines('nonsense')).toHaveLength(1);
    expect(lines({ ...SHEET, title: 3, seed: '', items: 'none' })).toHaveLength(3);
  });

  test('asks for kinds in the versions that it was made with', async () => {
    const later = { ...SHEET, items: SHEET.items.map((item) => ({ ...item, version: 9 })) };
    expect(faultsOf(await sheetKinds(later)).map(({ path }) => path)).toEqual([
      'items[0].version',
      'items[1].version',
    ]);
  });
});

describe('the fingerprint of a sheet', () => {
  test('stays when title or note are put right, and changes with all else', () => {
    const own = fingerprintOf(SHEET);
    expect(own).toMatch(/^[0-9a-z]{10}$/);
    expect(fingerprintOf({ ...SHEET, title: 'Week 3', note: '' })).toBe(own);
    const [one, two] = SHEET.items;
    if (!one || !two) throw new Error('two items');
    const others = [
      { ...SHEET, seed: 'week-4' },
      { ...SHEET, answers: 'handed-in' as const },
      { ...SHEET, items: [two, one] },
      { ...SHEET, items: [{ ...one, marks: 5 }, two] },
      { ...SHEET, items: [{ ...one, attempts: 2 }, two] },
      { ...SHEET, items: [{ ...one, hintCost_percent: 0 }, two] },
      { ...SHEET, items: [{ ...one, tolerance: 'wide' as const }, two] },
    ].map(fingerprintOf);
    expect(new Set([own, ...others]).size).toBe(8);
  });
});

describe('the link of a sheet', () => {
  test('holds the whole sheet, in any script', () => {
    const sheet = { ...SHEET, note: 'Größe ± 0,5 mm — 日本\nsecond line' };
    const link = `https://book.example.org/sheets/do#${sheetFragment(sheet)}`;
    expect(link).toMatch(/^[!-~]+$/);
    expect(valueOf(sheetIn(` ${link}\n`))).toStrictEqual(sheet);
    expect(valueOf(sheetIn(sheetFragment(sheet)))).toStrictEqual(sheet);
    expect(valueOf(sheetIn(JSON.stringify(sheet)))).toStrictEqual(sheet);
  });

  test.each(['', 'hello', '{', '#sheet=%%%', '#sheet=AAAA'])('%j holds none', (text) => {
    expect(faultsOf(sheetIn(text))).toEqual([
      expect.objectContaining({ path: '', wrong: expect.stringContaining('no sheet') as string }),
    ]);
  });

  test('cut off on its way is refused, not read in part', () => {
    const link = sheetFragment(SHEET);
    for (const length of [20, link.length >> 1, link.length - 1])
      expect(sheetIn(link.slice(0, length)).ok).toBe(false);
  });
});
