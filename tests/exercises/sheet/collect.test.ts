import { describe, expect, test } from 'vitest';
import { collect } from '#exercises/sheet/collect.ts';
import { piecesOf } from '#exercises/sheet/pieces.ts';
import { sealed } from '#exercises/sheet/result.ts';
import { codeOf } from '#exercises/sheet/short-code.ts';
import { sheetKinds } from '#exercises/sheet/sheet-kinds.ts';
import { variantOf } from '#exercises/sheet/variant.ts';
import { faultsOf } from '#core/fault.ts';
import { valueOf } from '../../core/example-corner.ts';
import { KINDS, resultOf, rightWork, SHEET, variant } from './a-sheet.ts';

const taken = (...texts: readonly string[]) =>
  collect(
    SHEET,
    KINDS,
    texts.flatMap((text, i) => piecesOf(`piece ${i + 1}`, text)),
  );

const json = (value: unknown): string => JSON.stringify(value);

/** Why the only piece is refused, and where the faults are. */
function refusal(text: string) {
  const { accepted, refused } = taken(text);
  expect(accepted).toEqual([]);
  expect(refused).toHaveLength(1);
  const [one] = refused;
  return [one?.why, ...(one?.faults ?? []).map(({ path }) => path)];
}

describe('collecting', () => {
  test('takes documents, lists of them and codes alike, and puts them in the order of the numbers', () => {
    const { accepted, refused } = taken(
      json([resultOf(9), resultOf(2)]),
      `${codeOf(resultOf(4))}\n${codeOf(resultOf(3))}`,
      json(resultOf(1)),
    );
    expect(refused).toEqual([]);
    expect(accepted.map(({ marked }) => marked.result.number)).toEqual([1, 2, 3, 4, 9]);
    expect(accepted.map(({ marked }) => [marked.earned, marked.possible])).toEqual(
      accepted.map(() => [10, 10]),
    );
  });

  test('refuses a file that gives itself marks', () => {
    expect(refusal(json({ ...resultOf(1), marks: 10 }))).toEqual(['unreadable', 'marks']);
  });

  test('refuses answers changed after handing in', () => {
    const [, other] = variant(1).map(rightWork);
    const changed = { ...resultOf(1, [{ attempts: [], hints: [] }, ...(other ? [other] : [])]) };
    const { check } = resultOf(1, [{ attempts: [], hints: [] }]);
    expect(refusal(json({ ...changed, check }))).toEqual(['tampered', 'check']);
    expect(refusal(json({ ...resultOf(1), number: 2 }))).toEqual(['tampered', 'check']);
  });

  test('refuses what belongs to another sheet or to another version of this one', () => {
    const other = { ...SHEET, seed: 'week-4' };
    expect(refusal(json(resultOf(1, undefined, other)))).toEqual(['foreign', 'sheet']);
    const newer = { ...SHEET, items: SHEET.items.map((item) => ({ ...item, marks: 1 })) };
    expect(refusal(json(resultOf(1, undefined, newer)))).toEqual(['foreign', 'sheet']);
  });

  test('tells a result of an older version of a kind from that of another sheet, and takes the rest', async () => {
    const item = { marks: 3, attempts: 1, tolerance: 'usual' } as const;
    const now = {
      ...SHEET,
      items: [...SHEET.items, { ...item, kind: 'tilt-in-a-turn', version: 2 }],
    };
    const kinds = valueOf(await sheetKinds(now));
    const work = (number: number) => variantOf(now, kinds, number).map(rightWork);
    const before = { ...now, items: now.items.map((one) => ({ ...one, version: 1 })) };
    const { accepted, refused } = collect(now, kinds, [
      ...piecesOf('old', json(resultOf(1, work(1), before))),
      ...piecesOf('other', json(resultOf(2, work(2), { ...before, seed: 'week-4' }))),
      ...piecesOf('new', json(resultOf(3, work(3), now))),
    ]);
    expect(refused.map(({ name, why }) => [name, why])).toEqual([
      ['old', 'outdated'],
      ['other', 'foreign'],
    ]);
    expect(refused[0]?.faults[0]?.wrong).toContain('older version of “Two moments on one bearing”');
    expect(accepted.map(({ name, marked }) => [name, marked.earned])).toEqual([['new', 13]]);
  });

  test('does not begin on a sheet whose kinds are here in another version, and says which', async () => {
    const items = [
      { kind: 'tilt-in-a-turn', version: 1, marks: 3, attempts: 1, tolerance: 'usual' } as const,
    ];
    expect(faultsOf(await sheetKinds({ ...SHEET, items }))).toEqual([
      {
        path: 'items[0].version',
        wrong: expect.stringMatching(/^is 1, which this copy/) as string,
        allowed: expect.stringContaining('2 for tilt-in-a-turn') as string,
      },
    ]);
  });

  test('refuses what could not be done on the sheet', () => {
    const [first, second] = variant(1).map(rightWork);
    if (!first || !second) throw new Error('two items');
    const attempts = [...first.attempts, ...first.attempts];
    expect(refusal(json(resultOf(1, [{ attempts, hints: [0] }, second])))).toEqual([
      'impossible',
      'items[0].attempts',
      'items[0].hints',
    ]);
    expect(refusal(json(resultOf(1, [first])))).toEqual(['impossible', 'items']);
    expect(refusal(json(resultOf(1, [first, { attempts: [[]], hints: [7] }])))).toEqual([
      'impossible',
      'items[1].attempts',
      'items[1].hints',
    ]);
  });

  test('takes the first result of a number and refuses the second, naming the first', () => {
    const [first] = variant(1).map(rightWork);
    if (!first) throw new Error('an item');
    const later = resultOf(1, [first, { attempts: [], hints: [] }]);
    const { accepted, refused } = taken(json(resultOf(1)), json(later), json(resultOf(1)));
    expect(accepted.map(({ name }) => name)).toEqual(['piece 1']);
    expect(refused.map(({ name, why }) => [name, why])).toEqual([
      ['piece 2', 'duplicate'],
      ['piece 3', 'duplicate'],
    ]);
    expect(refused[0]?.faults[0]?.wrong).toMatch(/piece 1.*other answers/);
    expect(refused[1]?.faults[0]?.wrong).toMatch(/piece 1.*the very same answers/);
  });

  test.each([
    '',
    'hello',
    '{"format":',
    '[]',
    'kb1 abcde',
    'kb1 !!.',
    '{"format":"knucklebook sheet"}',
  ])('refuses %j, which is no result', (text) => {
    expect(taken(text).refused.map(({ why }) => why)).toEqual(['unreadable']);
  });

  test('cannot tell a forger who works the checksum out anew: the guide says so', () => {
    const forged = sealed({ ...resultOf(1), number: 2 });
    // Another number has other exercises, so that the answers of the first earn little there.
    const { accepted } = taken(json(forged));
    expect(accepted).toHaveLength(1);
    expect(accepted[0]?.marked.earned).toBeLessThan(10);
  });
});
