import { describe, expect, test } from 'vitest';
import { randomOf } from '#exercises/random.ts';
import { helpLevel } from '#exercises/record/help-level.ts';

type Worked = Parameters<typeof helpLevel>[0][number];

const did = (help: number, firstTry: boolean): Worked => ({ help, firstTry });

describe('of four parts, the next exercise has worked', () => {
  test.each<[string, readonly Worked[], number]>([
    ['all, for a new kind', [], 4],
    ['all but the last, after the example', [did(4, true)], 3],
    ['all again, after a miss with the example in view', [did(4, false)], 4],
    ['one less, after a success', [did(4, true), did(3, true)], 2],
    ['none, after two successes', [did(4, true), did(3, true), did(2, true)], 0],
    ['one more, after a miss', [did(4, true), did(3, true), did(2, false)], 3],
    ['none, for who starts unaided and succeeds', [did(0, true)], 0],
    ['one, after a miss unaided', [did(0, true), did(0, true), did(0, false)], 1],
    ['none again, after a miss made good', [did(0, false), did(1, true)], 0],
    ['not less than was shown on request', [did(0, false), did(3, true)], 2],
  ])('%s', (_, attempts, expected) => {
    expect(helpLevel(attempts, 4)).toBe(expected);
  });
});

test('a kind of one part is unaided after its example', () => {
  expect(helpLevel([], 1)).toBe(1);
  expect(helpLevel([did(1, true)], 1)).toBe(0);
});

describe('a hint', () => {
  const hinted = (help: number): Worked => ({ help, firstTry: true, hints: 1 });

  test('costs nothing: help goes on fading', () => {
    expect(helpLevel([did(4, true), hinted(3)], 4)).toBe(2);
    expect(helpLevel([did(4, true), hinted(3), hinted(2), hinted(1)], 4)).toBe(0);
  });

  test('is no proof that one can do without', () => {
    expect(helpLevel([did(4, true), hinted(3), hinted(2)], 4)).toBe(1);
  });
});

/** The help of each of 30 exercises, for somebody who succeeds with a fixed chance and can always read an example. */
function simulated(name: string, chance: number, parts: number): readonly number[] {
  const random = randomOf(name);
  const attempts: Worked[] = [];
  for (let item = 0; item < 30; item++) {
    const help = helpLevel(attempts, parts);
    attempts.push(did(help, help === parts || random.integer(1, 100) <= 100 * chance));
  }
  return attempts.map(({ help }) => help);
}

describe.each([2, 3, 4])('in %i parts', (parts) => {
  const learners = (chance: number) =>
    Array.from({ length: 300 }, (_, i) => simulated(`learner ${i} at ${chance}`, chance, parts));
  const unaidedShare = (chance: number): number => {
    const levels = learners(chance).flat();
    return levels.filter((help) => help === 0).length / levels.length;
  };

  test('an expert works unaided from the fourth exercise on', () => {
    const soon = learners(0.95).filter((helps) => helps.slice(0, 4).includes(0));
    expect(soon.length / 300).toBeGreaterThan(0.85);
    expect(unaidedShare(0.95)).toBeGreaterThan(0.75);
  });

  test('nobody meets a new kind unaided, and a novice seldom meets it unaided later', () => {
    for (const chance of [0.2, 0.6, 0.95])
      expect(learners(chance).every(([first]) => first === parts)).toBe(true);
    expect(unaidedShare(0.2)).toBeLessThan(0.25);
  });

  test('the better somebody is, the less help there is', () => {
    expect(unaidedShare(0.6)).toBeGreaterThan(unaidedShare(0.2));
    expect(unaidedShare(0.95)).toBeGreaterThan(unaidedShare(0.6));
  });
});
