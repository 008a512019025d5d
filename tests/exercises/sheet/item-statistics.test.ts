import { describe, expect, test } from 'vitest';
import { randomOf } from '#exercises/random.ts';
import { statisticsOf } from '#exercises/sheet/item-statistics.ts';
import { unevenGivens, type Answered } from '#exercises/sheet/uneven.ts';

/** Uniform from 0 to 1, and spread like a bell about 0; the same for the same text. */
function chances(text: string) {
  const random = randomOf(text);
  const uniform = (): number => (random.integer(0, 999_999) + 0.5) / 1e6;
  const bell = (): number =>
    Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, bell, random };
}

/** Of `classes` classes, the share of which something holds. */
const shareOf = (classes: number, holds: (index: number) => boolean): number =>
  Array.from({ length: classes }, (_, i) => holds(i)).filter(Boolean).length / classes;

describe('an exercise in a class', () => {
  // Worked by hand, twice fifteen times over: right 1 1 0 0, marks on the rest 4 3 2 1. Mean of the right ones 3.5, of
  // the others 1.5, spread √1.25 over all: r = (3.5 − 1.5)/√1.25 · √(0.5·0.5) = 0.8944.
  const fold = <Row>(rows: readonly Row[], times: number) =>
    Array.from({ length: times }, () => rows).flat();
  const own = [1, 1, 0, 0];
  const rest = [4, 3, 2, 1];

  test('of forty has its share and its correlation with the rest, and no words yet', () => {
    const facts = statisticsOf(fold(own, 10), fold(rest, 10));
    expect(facts).toMatchObject({ students: 40, right: 20, facility: { value: 0.5 } });
    expect(facts.discrimination?.value).toBeCloseTo(0.8944, 4);
    expect(facts.words).toBeUndefined();
  });

  test('of fewer than thirty has counts only', () => {
    expect(statisticsOf(fold(own, 7), fold(rest, 7))).toEqual({
      students: 28,
      right: 14,
    });
  });

  test.each([
    [[1, 1, 0, 0], [4, 3, 2, 1], /^Of usual difficulty\. Goes well/],
    [[1, 1, 0, 0], [1, 2, 3, 4], /look for what misleads/],
    [[1, 0, 1, 0], [1, 1, 2, 2], /Hardly goes with the rest/],
    [[1, 1, 1, 1], [1, 1, 2, 2], /^Easy\.$/],
    [[0, 0, 0, 0], [1, 1, 2, 2], /^Hard\.$/],
  ])('of a hundred gets words: %j with %j', (first, second, words) => {
    expect(statisticsOf(fold(first, 25), fold(second, 25)).words).toMatch(words);
  });

  // Simulated classes of 40: an ability, an exercise that is right where ability and luck pass a bar, and a rest that
  // goes by ability and luck. The true values come from one class of 400 000 in the same way.
  test('has intervals that hold the truth in 93 to 97 of 100 classes', () => {
    const { bell } = chances('classes');
    const draw = (n: number) => {
      const own: number[] = [];
      const rest: number[] = [];
      for (let i = 0; i < n; i++) {
        const ability = bell();
        own.push(ability + 1.2 * bell() > -0.3 ? 1 : 0);
        rest.push(Math.round(10 + 3 * ability + 3 * bell()));
      }
      return { own, rest };
    };
    const { own, rest } = draw(400_000);
    const truth = statisticsOf(own, rest);
    const held = { facility: 0, discrimination: 0 };
    const classes = 5000;
    for (let i = 0; i < classes; i++) {
      const one = draw(40);
      const facts = statisticsOf(one.own, one.rest);
      for (const key of ['facility', 'discrimination'] as const) {
        const { low = NaN, high = NaN } = facts[key] ?? {};
        const value = truth[key]?.value ?? NaN;
        if (low <= value && value <= high) held[key] += 1;
      }
    }
    for (const [what, count] of Object.entries(held)) {
      expect(count / classes, what).toBeGreaterThan(0.93);
      expect(count / classes, what).toBeLessThan(0.97);
    }
  });
});

describe('whether an exercise is as hard for all numbers', () => {
  /** A class of `n` with three numbers each, right by a chance that may hang on the first of them. */
  function classOf(text: string, n: number, chance: (spacer: number) => number): Answered[] {
    const { uniform, random } = chances(text);
    return Array.from({ length: n }, () => {
      const spacer_mm = random.integer(5, 50);
      const numbers = {
        spacer_mm,
        scrub_mm: random.integer(-30, 30),
        answer: random.integer(1, 99),
      };
      return { numbers, right: uniform() < chance(spacer_mm) };
    });
  }

  test('finds a third that was made hard, in 95 of 100 classes and more, and says which', () => {
    const found = shareOf(1000, (i) => {
      const uneven = unevenGivens(classOf(`hard ${i}`, 150, (s) => (s > 34 ? 0.3 : 0.8)));
      return uneven.some(({ given, thirds }) => {
        const last = thirds[2];
        return given === 'spacer_mm' && (last?.from ?? 0) > 30 && (last?.n ?? 0) >= 40;
      });
    });
    expect(found).toBeGreaterThanOrEqual(0.95);
  });

  test.each([0.3, 0.5, 0.9])('blames an even class in 2 of 100 or fewer, at %f right', (chance) => {
    const blamed = shareOf(
      2000,
      (i) => unevenGivens(classOf(`even ${i}`, 120, () => chance)).length > 0,
    );
    expect(blamed).toBeLessThanOrEqual(0.02);
  });

  test('says nothing before a hundred answers', () => {
    expect(unevenGivens(classOf('few', 99, (s) => (s > 34 ? 0 : 1)))).toEqual([]);
    expect(unevenGivens(classOf('few', 100, (s) => (s > 34 ? 0 : 1)))).not.toEqual([]);
  });

  test('keeps equal numbers together, and leaves out a number that does not vary', () => {
    const answered = classOf('same', 150, (s) => (s > 34 ? 0.2 : 0.9)).map((one) => ({
      ...one,
      numbers: { ...one.numbers, scrub_mm: 12 },
    }));
    const [first, ...others] = unevenGivens(answered);
    expect(others).toEqual([]);
    const thirds = first?.thirds ?? [];
    expect(thirds.map(({ n }) => n).reduce((sum, n) => sum + n, 0)).toBe(150);
    expect(thirds[0]?.to).toBeLessThan(thirds[1]?.from ?? NaN);
  });
});
