/** The number at the start of a text, with every value that it can have, and what stands behind it. */
export type Numeral = NumeralFound | NumeralUnreadable;

export interface NumeralFound {
  readonly ok: true;
  /** One value; two where the text can be meant in two ways. */
  readonly values: readonly number[];
  readonly rest: string;
}

export interface NumeralUnreadable {
  readonly ok: false;
  readonly wrong: string;
  readonly allowed: string;
}

export const found = (values: readonly number[], rest: string): NumeralFound => ({
  ok: true,
  values,
  rest: rest.trim(),
});

export const unreadable = (wrong: string, allowed: string): NumeralUnreadable => ({
  ok: false,
  wrong,
  allowed,
});
