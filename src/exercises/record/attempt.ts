/** How sure somebody was before they were told: unsure, fairly sure, sure. */
export type Sureness = 1 | 2 | 3;

/** One exercise that has been worked, as the practice record keeps it. */
export interface Attempt {
  readonly kind: string;
  readonly version: number;
  readonly seed: string;
  /** When it was first checked, in milliseconds since 1970. */
  readonly at: number;
  /** How many parts, counted from the first, were worked for the learner; all of them for an example. */
  readonly help: number;
  /** Whether everything that was asked was right the first time, before the solution was seen. */
  readonly firstTry: boolean;
  /** How many hints had been read by then. Records of the first copies of the course have no count: there, a hint made it no first try. */
  readonly hints?: number;
  /** What the learner said of it before being told, if asked. */
  readonly sure?: Sureness;
  readonly earned: number;
  readonly possible: number;
}

/** Whether an attempt shows what the learner can do alone: nothing worked for them, and no hint read. */
export const isUnaided = ({ help, hints = 0 }: Pick<Attempt, 'help' | 'hints'>): boolean =>
  help === 0 && hints === 0;

/** What tells one attempt from every other: nobody checks the same exercise twice within a millisecond. */
const attemptName = ({ kind, version, seed, at }: Attempt): string =>
  `${kind}/${version}/${seed}/${at}`;

/** Those that are not among the known ones, each once. */
export function notYetKnown(
  attempts: readonly Attempt[],
  known: readonly Attempt[],
): readonly Attempt[] {
  const names = new Set(known.map(attemptName));
  return attempts.filter((attempt) => {
    const name = attemptName(attempt);
    return !names.has(name) && names.add(name);
  });
}

/** The attempts in the order they were made; the same order whatever order they come in. */
export const inOrder = (attempts: readonly Attempt[]): readonly Attempt[] =>
  attempts.toSorted((a, b) => a.at - b.at || (attemptName(a) < attemptName(b) ? -1 : 1));
