/** A value that rests on a rule of thumb: in SI, with an honest range and the rule in words. */
export interface Estimate {
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** One sentence: what was taken for granted, and how far it may be off. */
  readonly assumption: string;
}

/** An estimate that is in proportion to some length. */
export const proportional = (
  to: number,
  { value, least, most, assumption }: Estimate,
): Estimate => ({ value: value * to, least: least * to, most: most * to, assumption });
