import { expect, test } from 'vitest';
import { compareVariants } from '#exercises/sheet/equal-difficulty.ts';
import { MODEL, variantOf } from '#exercises/sheet/variant.ts';
import { KINDS, SHEET, variant } from './a-sheet.ts';

const numbers = Array.from({ length: 30 }, (_, i) => i + 1);

test('a student has the same variant every time, and each student another', () => {
  const items = (number: number) => JSON.stringify(variant(number).map(({ item }) => item));
  expect(items(7)).toBe(items(7));
  expect(new Set(numbers.map(items)).size).toBe(30);
});

test('another seed of the sheet gives everybody another variant, another title does not', () => {
  const items = (sheet: typeof SHEET) => variant(7, sheet).map(({ item }) => item);
  expect(items({ ...SHEET, seed: 'week-4' })).not.toEqual(items(SHEET));
  expect(items({ ...SHEET, title: 'Week 3', answers: 'never' })).toEqual(items(SHEET));
});

test('everybody has the same steps, the same pattern and the same signs', () => {
  const model = variantOf(SHEET, KINDS, MODEL).map((one) => one.signature());
  for (const number of numbers)
    expect(variant(number).map((one) => one.signature())).toEqual(model);
});

test('a wide tolerance is twice the usual one, and nothing else changes', () => {
  const wide = { ...SHEET, items: SHEET.items.map((i) => ({ ...i, tolerance: 'wide' as const })) };
  variant(7, wide).forEach(({ parts }, i) => {
    parts.forEach(({ answer, tolerance }, p) => {
      const usual = variant(7)[i]?.parts[p];
      expect([answer, tolerance]).toEqual([usual?.answer, 2 * (usual?.tolerance ?? NaN)]);
    });
  });
});

test('the comparison of variants finds equal difficulty, and how many share their answers', () => {
  for (const { kind, equal, different, sharing, least, most } of compareVariants(
    SHEET,
    KINDS,
    numbers,
  )) {
    expect(equal, kind).toBe(true);
    expect(different + sharing, kind).toBeGreaterThanOrEqual(30);
    expect(least, kind).toBeLessThan(most);
  }
});

test('the comparison notices variants that are not alike', () => {
  const [kind, ...others] = KINDS;
  if (!kind) throw new Error('no kind');
  let draws = 0;
  const uneven = {
    ...kind,
    exercise: (seed: string) => {
      const exercise = kind.exercise(seed);
      draws += 1;
      return {
        ...exercise,
        signature: () => 'same',
        parts: exercise.parts.slice(draws > 5 ? 1 : 0),
      };
    },
  };
  const [first] = compareVariants(SHEET, [uneven, ...others], numbers);
  expect(first?.equal).toBe(false);
});
