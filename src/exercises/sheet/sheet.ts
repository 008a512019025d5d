/** When a student is told what came out. */
export type AnswersShown =
  /** After each attempt, in words; the worked solution once the attempts are used up. */
  | 'each-attempt'
  /** Once the sheet is handed in. */
  | 'handed-in'
  /** Not by the student's page. */
  | 'never';

/** How near an answer has to be: what the kind asks, or twice that, for work by drawing and measuring. */
export type TolerancePolicy = 'usual' | 'wide';

/** One exercise of a sheet. Its numbers are another for each student, its kind and its difficulty are not. */
export interface SheetItem {
  readonly kind: string;
  readonly version: number;
  readonly marks: number;
  /** How often a student may have it checked; the best attempt counts. */
  readonly attempts: number;
  /** Share of a part's marks that its hint costs, in percent; left out where there are no hints. */
  readonly hintCost_percent?: number;
  readonly tolerance: TolerancePolicy;
}

/** An instructor's set of exercises, as it is published: a document of its own, without any server. */
export interface Sheet {
  readonly format: typeof SHEET_FORMAT;
  readonly version: typeof SHEET_VERSION;
  readonly title: string;
  /** What the instructor has to say to the students; may be empty. */
  readonly note: string;
  /** Together with a student's number it decides all numbers of the student's own variant. */
  readonly seed: string;
  readonly answers: AnswersShown;
  readonly items: readonly SheetItem[];
}

export const SHEET_FORMAT = 'knucklebook sheet';
export const SHEET_VERSION = 1;

export const ANSWERS_SHOWN = ['each-attempt', 'handed-in', 'never'] as const;
export const TOLERANCE_POLICIES = ['usual', 'wide'] as const;

/** What a sheet may be made of; bounds included. */
export const SHEET_LIMITS = {
  titleLetters: 120,
  noteLetters: 2000,
  items: 30,
  marks: { least: 0.5, most: 100, unit: '' },
  attempts: { least: 1, most: 9 },
  hintCost_percent: { least: 0, most: 100, unit: '' },
  version: { least: 1, most: 999 },
  /** The numbers that an instructor gives to students. */
  number: { least: 1, most: 999_999 },
} as const;

/** Which seeds there may be: they stand in addresses and are read aloud. */
export const SEED_PATTERN = /^[a-z0-9-]{1,40}$/;
