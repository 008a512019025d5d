import { sha256 } from '@noble/hashes/sha2.js';
import type { Exercise } from '#exercises/exercise.ts';
import { grade } from '#exercises/grade.ts';
import { loadKinds } from '#exercises/registry.ts';
import { pairedRatio, type BenchRow } from './paired-ratio.ts';

const KINDS = await loadKinds();
const SHEET = 10;
const SECOND_ms = 1000;

let seed = 0;

/** One exercise of every kind, each from a seed of its own. */
const drawAll = (): readonly Exercise[] => KINDS.map((kind) => kind.exercise(`bench ${seed++}`));

/** Grades an exercise that somebody has worked with a first value a little off, so that every part follows on. */
function gradeOff(exercise: Exercise): number {
  const entries: number[] = [];
  for (const { answer, follow } of exercise.parts) {
    entries.push(entries.length === 0 ? 1.13 * answer : follow(entries));
  }
  return grade(exercise, entries).earned;
}

const utf8 = new TextEncoder();

/** Drawing and grading, against each other and against the hash that every seed has to go through. */
export function benchExercises(): readonly BenchRow[] {
  const sheet = drawAll().slice(0, SHEET);
  const drawAndGrade = () => drawAll().reduce((sum, exercise) => sum + gradeOff(exercise), 0);
  const hashes = () =>
    KINDS.reduce((sum) => sum + (sha256(utf8.encode(`bench ${seed++}`))[0] ?? 0), 0);
  const drawSheet = () =>
    KINDS.slice(0, SHEET).reduce(
      (sum, kind) => sum + kind.exercise(`bench ${seed++}`).parts.length,
      0,
    );
  const gradeSheet = () => sheet.reduce((sum, exercise) => sum + gradeOff(exercise), 0);
  return [
    {
      what: 'grading a sheet of ten : drawing it',
      aim: 2,
      ...pairedRatio(gradeSheet, drawSheet),
    },
    {
      what: 'drawing and grading an exercise : hashing its seed',
      ...pairedRatio(drawAndGrade, hashes),
    },
  ];
}

/** How many exercises one core draws and grades in a second, over all kinds; it says nothing about another machine. */
export function exercisesPerSecond(): number {
  let count = 0;
  const start = performance.now();
  while (performance.now() - start < SECOND_ms) {
    drawAll().forEach(gradeOff);
    count += KINDS.length;
  }
  return (count * SECOND_ms) / (performance.now() - start);
}
