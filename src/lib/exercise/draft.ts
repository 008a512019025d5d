import type { Sureness } from '#exercises/record/attempt.ts';

/** What stands in one field of an exercise that is being worked. */
export interface TypedField {
  readonly text: string;
  readonly word?: 'positive' | 'negative' | undefined;
}

/** An exercise in the middle: everything that a reload would lose. */
export interface Draft {
  /** Parts worked for the learner; as many as the kind has where an example stood before it. */
  readonly worked: number;
  readonly fields: readonly TypedField[];
  readonly hints: readonly number[];
  readonly checks: number;
  readonly solutionShown: boolean;
  readonly solutionSeen: boolean;
  readonly stepsOpen: boolean;
  readonly sure?: Sureness | undefined;
  /** When it was last touched, in milliseconds since 1970. */
  readonly at: number;
}

/** The name that a draft is kept under. */
export const draftName = (exercise: {
  readonly kind: string;
  readonly version: number;
  readonly seed: string;
}): string => `${exercise.kind}/${exercise.version}/${exercise.seed}`;

const isFields = (value: unknown): value is readonly TypedField[] =>
  Array.isArray(value) &&
  value.every((one: unknown) => typeof (one as TypedField | null)?.text === 'string');

/** Whether what was kept fits an exercise of so many parts; it may come from another copy of the course. */
export const fitsParts = (draft: Draft, parts: number): boolean =>
  isFields(draft.fields) && draft.fields.length === parts && Array.isArray(draft.hints);
