/** A formula of the course. */
export interface Formula {
  readonly id: string;
  /** In TeX, short enough for half a sheet of paper. */
  readonly tex: string;
  /** Other forms that lessons write it in. */
  readonly also?: readonly string[];
  /** What it gives, in a few words. */
  readonly gives: string;
  /** Where it holds, and what its sign means. */
  readonly note?: string;
  /** The lesson that teaches it, by its address. */
  readonly lesson: string;
}

export interface FormulaGroup {
  readonly name: string;
  readonly formulas: readonly Formula[];
}
