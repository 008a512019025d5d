/** Where a value of a car comes from. What is less sure has the wider ±; the reader of a report is told each. */
export const SOURCES = {
  given: { word: 'given', about: 'as the car’s document has it, taken as exact' },
  measured: { word: 'measured', about: 'read on this car with a tool' },
  sheet: { word: 'sheet', about: 'from an alignment sheet or a maker’s data for this car' },
  typical: { word: 'typical', about: 'not known of this car: what is usual, with a wide ±' },
  guess: { word: 'guess', about: 'judged by eye' },
} as const satisfies Record<string, { readonly word: string; readonly about: string }>;

export type Source = keyof typeof SOURCES;

export const SOURCE_IDS = Object.keys(SOURCES) as [Source, ...Source[]];

/** A value of the car with its doubt, SI. */
export interface KnownValue {
  readonly value: number;
  /** ±, 0 or more: every value within it is as likely as the next. */
  readonly plusMinus: number;
  readonly source: Source;
}
