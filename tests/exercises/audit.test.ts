import { describe, expect, test } from 'vitest';
import { CHECKS, faultsOf } from '#exercises/audit/checks.ts';
import { tryChecks } from '#exercises/audit/check.ts';
import { figureFaults, figuresOf, type KindFigures } from '#exercises/audit/figures.ts';
import { simulate, simulationFaults } from '#exercises/audit/simulate.ts';
import type { DrawnPart, DrawnSlip, Exercise } from '#exercises/exercise.ts';
import { isList } from '#exercises/forms/form.ts';
import { loadKind } from '#exercises/registry.ts';
import { mm, phrase } from '#exercises/phrase.ts';
import { exercisesOf } from './every-kind.ts';
import { TEXTBOOK_CHECKS } from './textbook-checks.ts';

// Whether the audit finds what it is there to find: each check on an exercise with just its fault planted.

const kind = await loadKind('spindle-offset-spacer');
const sound = kind.exercise('sound');

/** The exercise with other things in one of its parts. */
const withPart = (index: number, other: (part: DrawnPart) => Partial<DrawnPart>): Exercise => ({
  ...sound,
  parts: sound.parts.map((part, i) => (i === index ? { ...part, ...other(part) } : part)),
});

/** The exercise with other things in the first slip of its first part. */
const withSlip = (other: Partial<DrawnSlip>): Exercise =>
  withPart(0, ({ slips }) => ({
    slips: () => slips().map((s, i) => (i === 0 ? { ...s, ...other } : s)),
  }));

const nothing = phrase`Wrong.`;

/** An exercise cut off behind its first letter, so that it ends with a guess. */
function endingWithLetter({ parts, ...exercise }: Exercise): Exercise {
  const first = parts.findIndex(({ definition: { form } }) => isList(form));
  return { ...exercise, parts: parts.slice(0, first + 1) };
}

/** An exercise with scales that have no room on them. */
const offTheScale = (exercise: Exercise): Exercise => ({
  ...exercise,
  parts: exercise.parts.map((part) => {
    const { form } = part.definition;
    if (form?.kind !== 'set') return part;
    const scale = { ...form.scale, most: form.scale.least };
    return { ...part, definition: { ...part.definition, form: { ...form, scale } } };
  }),
});

/** For each check, an exercise that it must not let pass. */
const PLANTED: Readonly<Record<string, Exercise>> = {
  plausible: withPart(1, () => ({ answer: 40, tolerance: 0.01 })),
  apart: withSlip({ value: sound.parts[0]?.answer ?? NaN }),
  consistent: withPart(1, ({ answer }) => ({ answer: answer + 0.001 })),
  'leads-on': withPart(1, ({ answer }) => ({ follow: () => answer })),
  givens: { ...sound, question: () => phrase`A spacer of ${{ figure: '999\u202fmm' }}.` },
  asked: withPart(1, () => ({ tolerance: 1e-9 })),
  'three-digits': withPart(1, () => ({ tolerance: 1e-9 })),
  unrounded: withPart(1, ({ answer }) => ({ answer: -answer, follow: () => NaN })),
  typed: withPart(1, () => ({ tolerance: 1e-9 })),
  'slip-once': withSlip({ value: sound.parts[0]?.answer ?? NaN }),
  'last-alone': { ...sound, parts: sound.parts.map((p) => ({ ...p, answer: NaN })) },
  'no-guessing': endingWithLetter((await loadKind('find-what-moved')).exercise('sound')),
  set: offTheScale((await loadKind('set-load-line')).exercise('sound')),
  noughts: withPart(0, () => ({ answer: 0 })),
  'four-slips': withPart(0, ({ slips }) => ({ slips: () => slips().slice(0, 3) })),
  'slip-texts': withSlip({ text: () => nothing }),
  sentences: withPart(0, () => ({ hint: () => phrase`Look  here undefined` })),
  sums: withPart(0, () => ({ solution: () => phrase`So ${mm(1)} + ${mm(1)} = ${mm(3)}.` })),
  textbook: withPart(0, ({ answer }) => ({ answer: answer * 1.001 })),
  calculator: withPart(0, ({ answer }) => ({ answer: answer * 1.1, follow: () => NaN })),
};

describe('the audit', () => {
  test('finds nothing on an exercise that is sound', () => {
    expect(faultsOf(sound)).toEqual([]);
  });

  test.each([...CHECKS, ...TEXTBOOK_CHECKS])('finds by “$id” what was planted', (check) => {
    expect(tryChecks([check], [sound])).toEqual([]);
    const planted = PLANTED[check.id];
    if (!planted) throw new Error(`nothing is planted for ${check.id}`);
    const [found] = tryChecks([check], [sound, planted]);
    // The seed tells which exercise to look at.
    expect(found?.exercises ?? 0).toBe(check.sampled ? 0 : 1);
    expect(tryChecks([check], [planted])[0]?.first[0]).toMatch(/^sound: /);
  });

  const figures: KindFigures = {
    exercises: 5000,
    meanDraws: 1.2,
    mostDraws: 9,
    answers: 800,
    signatures: new Map([['+ +', 1]]),
  };

  test.each([
    ['nothing where a kind spreads well', {}, []],
    ['a kind that draws too often', { meanDraws: 3.2 }, [/3\.2 draws/]],
    ['a kind that nearly gave up', { mostDraws: 51 }, [/51 draws/]],
    ['answers that a class would share', { answers: 599 }, [/599 answers/]],
    [
      'a signature that hardly ever comes up',
      { signatures: new Map([['+ −', 0.01]]) },
      [/“\+ −” in 1\.0 %/],
    ],
  ] as const)('finds %s', (_, other, expected) => {
    const faults = figureFaults({ ...figures, ...other });
    expect(faults).toEqual(expected.map((words) => expect.stringMatching(words) as string));
  });

  test('counts what a kind comes to', () => {
    const { answers, signatures, meanDraws } = figuresOf(exercisesOf(kind, 400));
    expect(answers).toBeGreaterThan(100);
    expect([...signatures.values()].reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(meanDraws).toBeGreaterThanOrEqual(1);
  });

  test('names a slip that nobody is told of, and guesses that pay', () => {
    const deaf = exercisesOf(kind, 20).map((exercise) => ({
      ...exercise,
      parts: exercise.parts.map((part) => ({ ...part, tolerance: 10 })),
    }));
    const faults = simulationFaults(simulate(kind.id, deaf));
    expect(faults).toContainEqual(expect.stringMatching(/^names .* in 0\.0 %/));
    expect(faults).toContainEqual(expect.stringMatching(/to guesses$/));
  });
});
