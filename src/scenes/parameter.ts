import type { QuantityKind } from '#core/quantities.ts';

/** One thing a reader can set about a corner. Values are shifts from the car as it stands, or loads: 0 changes nothing. */
export interface Parameter {
  readonly name: string;
  readonly kind: QuantityKind;
  /** Bounds, both included, and the step of one key press, in millimetres, degrees or newtons. */
  readonly least: number;
  readonly most: number;
  readonly step: number;
  /** One word for each sign: a spacer carries the wheel `outboard`. */
  readonly positive: string;
  readonly negative: string;
  /** What a nought means. */
  readonly none: string;
}
