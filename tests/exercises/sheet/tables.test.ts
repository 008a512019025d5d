import { describe, expect, test } from 'vitest';
import { signPhrase } from '#core/quantities.ts';
import { toSI } from '#core/units/convert.ts';
import { markResult } from '#exercises/sheet/mark-result.ts';
import { itemFacts, kindFacts, slipFacts } from '#exercises/sheet/statistics.ts';
import { answersTable, marksTable } from '#exercises/sheet/tables.ts';
import { csv } from '#exercises/sheet/csv.ts';
import { KINDS, resultOf, rightWork, SHEET, typedAs, variant } from './a-sheet.ts';

const marked = (number: number, items = variant(number).map(rightWork)) =>
  markResult(SHEET, variant(number), resultOf(number, items));

/** The slip in the first part of the spacer exercise, carried on; everything else right. */
function withSlip(number: number) {
  const [spacer, rod] = variant(number);
  const [first, second] = spacer?.parts ?? [];
  if (!rod || !first || !second) throw new Error('two items');
  const wrong = -first.answer;
  const attempt = [typedAs(first, wrong), typedAs(second, second.follow([wrong]))];
  return marked(number, [{ attempts: [attempt], hints: [] }, rightWork(rod)]);
}

const none = [
  { attempts: [], hints: [] },
  { attempts: [], hints: [] },
];

const results = [marked(1), withSlip(2), withSlip(3), marked(4, none)];

describe('of four students, one all right, two with one slip, one who did nothing', () => {
  test('facility is what they earned of what there was', () => {
    const [spacer, rod] = itemFacts(SHEET, KINDS, results);
    expect(spacer).toMatchObject({ students: 4, full: 1, earned: 8, possible: 16 });
    expect(spacer?.parts).toMatchObject([
      { right: 1, followOn: 0, empty: 1, earned: 2, possible: 8 },
      { right: 1, followOn: 2, empty: 1, earned: 6, possible: 8 },
    ]);
    expect(rod).toMatchObject({ full: 3, earned: 18, possible: 24 });
  });

  test('the slip is counted once a student and named with its part', () => {
    expect(slipFacts(SHEET, KINDS, results)).toEqual([
      {
        position: 0,
        kind: 'spacer-scrub',
        part: 'scrub-before',
        label: 'Scrub radius without the spacer',
        slip: 'turned-round',
        confuses: 'inboard and outboard',
        students: 2,
      },
    ]);
  });

  test('kinds are summed up over the sheet', () => {
    const facts = itemFacts(SHEET, KINDS, results);
    expect(kindFacts(KINDS, [...facts, ...facts.slice(0, 1)])).toMatchObject([
      { kind: 'spacer-scrub', earned: 16, possible: 32 },
      { kind: 'rod-force-from-brake', earned: 18, possible: 24 },
    ]);
  });

  test('the table of marks has a row a student', () => {
    expect(csv(marksTable(KINDS, results))).toBe(
      [
        'number,1 A spacer behind the wheel,2 What the tie rod holds,marks,of,percent,hints',
        '1,4,6,10,10,100,0',
        '2,2,6,8,10,80,0',
        '3,2,6,8,10,80,0',
        '4,0,0,0,10,0,0',
        '',
      ].join('\r\n'),
    );
  });

  test('the table of answers has a row for each field, as it was typed', () => {
    const rows = answersTable(KINDS, results);
    expect(rows).toHaveLength(1 + 3 * 4);
    expect(rows[1]?.slice(0, 6)).toEqual([1, 1, 'spacer-scrub', 1, 'yes', 1]);
    const slips = rows.filter((row) => row.includes('turned-round'));
    expect(slips.map((row) => [row[0], row[5], row[10], row[11], row[13], row[14]])).toEqual([
      [2, 1, 'slip', 'turned-round', 0, 2],
      [3, 1, 'slip', 'turned-round', 0, 2],
    ]);
    const [first] = variant(2)[0]?.parts ?? [];
    if (!first) throw new Error('a part');
    const { text, word } = typedAs(first, -first.answer);
    const { quantity, label } = first.definition;
    if (word === undefined) throw new Error('a direction');
    expect(slips[0]?.slice(6, 10)).toEqual([label, text, 'mm', signPhrase(quantity, word)]);
    expect(rows[0]).toHaveLength(rows[1]?.length ?? NaN);
  });
});

describe('comma-separated values', () => {
  test.each([
    ['plain', 'plain'],
    ['a, b', '"a, b"'],
    ['a "b"', '"a ""b"""'],
    ['two\nlines', '"two\nlines"'],
    ['=1+1', "'=1+1"],
    ['+1', "'+1"],
    ['-12 mm', "'-12 mm"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\t=1', "'\t=1"],
    [' =1', "' =1"],
    ['=HYPERLINK("x","y")', '"\'=HYPERLINK(""x"",""y"")"'],
  ])('write the text %j as %s', (text, written) => {
    expect(csv([[text]])).toBe(`${written}\r\n`);
  });

  test('leave numbers numbers, negative ones too', () => {
    expect(csv([[-1.5, 0, 2e21, toSI(1, 'mm')]])).toBe('-1.5,0,2e+21,0.001\r\n');
    expect(() => csv([[NaN]])).toThrow(RangeError);
  });
});
