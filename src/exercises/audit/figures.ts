import { MOST_DRAWS, type Exercise } from '../exercise.ts';

/** What can be said of a kind only over many of its exercises. */
export interface KindFigures {
  readonly exercises: number;
  /** Items drawn for one exercise, on average and at most. */
  readonly meanDraws: number;
  readonly mostDraws: number;
  /** Different sets of answers, in bins two tolerances wide. */
  readonly answers: number;
  /** How often each signature comes up, as a share. */
  readonly signatures: ReadonlyMap<string, number>;
}

const DRAWS_ON_AVERAGE = 3;
/** So that in a class of thirty hardly anybody shares a value: 1 − (1 − 1/600)^29 is below 5 %. */
const ENOUGH_ANSWERS = 600;
/** A rarer signature would take long to be found for everybody on a sheet. */
const RAREST = 0.02;

/** How a kind spreads over its seeds. */
export function figuresOf(exercises: readonly Exercise[]): KindFigures {
  const draws = exercises.map((exercise) => exercise.draws);
  const counts = new Map<string, number>();
  for (const exercise of exercises) {
    const signature = exercise.signature();
    counts.set(signature, (counts.get(signature) ?? 0) + 1);
  }
  const { length } = exercises;
  return {
    exercises: length,
    meanDraws: draws.reduce((sum, n) => sum + n, 0) / length,
    mostDraws: draws.reduce((most, n) => Math.max(most, n), 0),
    answers: differentAnswers(exercises),
    signatures: new Map([...counts].map(([signature, count]) => [signature, count / length])),
  };
}

/** What is wrong with such figures. Answers are counted over some thousand exercises, or not at all. */
export function figureFaults(figures: KindFigures): readonly string[] {
  const { meanDraws, mostDraws, answers, exercises, signatures } = figures;
  return [
    ...(meanDraws <= DRAWS_ON_AVERAGE ? [] : [`takes ${meanDraws.toFixed(1)} draws on average`]),
    ...(mostDraws <= MOST_DRAWS ? [] : [`took ${mostDraws} draws once`]),
    ...(answers >= Math.min(ENOUGH_ANSWERS, exercises / 5)
      ? []
      : [`has ${answers} answers that can be told apart; ${ENOUGH_ANSWERS} are wanted`]),
    ...[...signatures]
      .filter(([, share]) => share <= RAREST)
      .map(([signature, share]) => `has “${signature}” in ${(100 * share).toFixed(1)} % only`),
  ];
}

/** Bins as wide as the widest that a part has anywhere, so that neighbours are not counted twice. */
function differentAnswers(exercises: readonly Exercise[]): number {
  const widths: number[] = [];
  for (const { parts } of exercises)
    for (const [i, { tolerance }] of parts.entries())
      widths[i] = Math.max(widths[i] ?? 0, 2 * tolerance);
  const bins = new Set<string>();
  for (const { parts } of exercises)
    bins.add(parts.map(({ answer }, i) => Math.round(answer / (widths[i] ?? NaN))).join(' '));
  return bins.size;
}
