import { describe, expect, test } from 'vitest';
import { toSI } from '#core/units/convert.ts';
import { wellApart } from '#exercises/apart.ts';
import { drawExercise } from '#exercises/exercise.ts';
import { givensOf } from '#exercises/givens.ts';
import { exerciseOfSignature } from '#exercises/signature.ts';
import { registered } from './every-kind.ts';
import { sample, SAMPLE } from './sample-kind.ts';

const mm = (value: number): number => toSI(value, 'mm');

test('a drawn exercise says where it came from', () => {
  expect(drawExercise(SAMPLE, 'abc')).toMatchObject({
    kind: 'sample',
    version: 1,
    seed: 'abc',
    item: { first_mm: 30, second_mm: 44 },
  });
});

test('a kind that never draws anything sound is reported, not drawn for ever', () => {
  expect(() => drawExercise({ ...SAMPLE, sound: () => false }, 'abc')).toThrow(
    'sample found no sound item for seed abc',
  );
});

test('an answer that equals a given is drawn again', () => {
  const draws = [15, 40].values();
  const draw = () => ({ first_mm: draws.next().value ?? 0, second_mm: 30 });
  expect(drawExercise({ ...SAMPLE, draw }, 'abc').item).toEqual({ first_mm: 40, second_mm: 30 });
});

test('two versions of a kind draw from different numbers', () => {
  const draw = (random: { integer: (least: number, most: number) => number }) => ({
    first_mm: random.integer(100, 900),
    second_mm: 44,
  });
  const of = (version: number) => drawExercise({ ...SAMPLE, version, draw }, 'abc').item;
  expect(of(1)).not.toEqual(of(2));
});

test('the givens are the members whose names end in a unit', () => {
  expect(givensOf({ spacer_mm: 20, camber_deg: -1.5, side: 'left', count: 3 })).toEqual([
    { amount: 20, unit: 'mm', si: 0.02 },
    { amount: -1.5, unit: 'deg', si: toSI(-1.5, 'deg') },
  ]);
});

describe('an answer of 10 mm with a tolerance of 1 mm', () => {
  const ten = { answer: mm(10), tolerance: mm(1), unit: 'mm' } as const;
  const given = (amount: number, unit: 'mm' | 'deg') => ({ amount, unit, si: toSI(amount, unit) });

  test.each([
    ['is kept with slips at 6 and 14 mm', [mm(6), mm(14)], [], true],
    ['is not kept with a slip at 7 mm', [mm(7)], [], false],
    ['is not kept with slips 1 mm from each other', [mm(15), mm(16)], [], false],
    ['is not kept with a slip that is no number', [NaN], [], false],
    ['is not kept where 10 mm is given', [], [given(10, 'mm')], false],
    ['is not kept where −10 mm is given', [], [given(-10, 'mm')], false],
    ['is kept where 0.6°, that is 0.01 rad, is given', [], [given(0.573, 'deg')], true],
  ])('%s', (_, slips, givens, expected) => {
    expect(wellApart(ten, slips, givens)).toBe(expected);
  });

  test('would not be kept at 3 mm, too near to nought', () => {
    expect(wellApart({ ...ten, answer: mm(3) }, [], [])).toBe(false);
  });
});

describe('a signature', () => {
  test('names the pattern of the item and the signs of the answers', () => {
    expect(sample().signature()).toBe('fixed · + +');
  });

  test('is found from any seed, and the exercise says which seed it took', () => {
    for (const kind of registered) {
      const wanted = kind.exercise('model').signature();
      for (const learner of ['ada', 'ben', 'cem']) {
        const exercise = exerciseOfSignature(kind, learner, wanted);
        expect(exercise.signature()).toBe(wanted);
        expect(kind.exercise(exercise.seed).item).toEqual(exercise.item);
      }
    }
  });

  test('that a kind does not have is reported', () => {
    const kind = { id: 'sample', exercise: (seed: string) => drawExercise(SAMPLE, seed) };
    expect(() => exerciseOfSignature(kind, 'abc', 'other')).toThrow('signature “other”');
  });
});
