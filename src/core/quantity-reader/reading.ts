import type { Dimension } from '../units/dimension.ts';
import type { UnitName } from '../units/units.ts';

/** A typed quantity that has been understood. All its numbers are finite, and zero is never −0. */
export interface QuantityRead {
  readonly kind: 'quantity';
  /** In SI: what the core computes with. */
  readonly si: number;
  /** In the unit that the field shows. */
  readonly shown: number;
  /** As typed, in `unit`. */
  readonly amount: number;
  readonly unit: UnitName;
  /** Whether the unit was typed. If not, it is the one that the field shows. */
  readonly unitTyped: boolean;
}

/** What every answer that is not a quantity knows. */
interface Asked {
  /** What was typed, in plain characters and without spaces around it. */
  readonly text: string;
  /** The unit that the field shows. */
  readonly wanted: UnitName;
}

export interface NothingTyped extends Asked {
  readonly kind: 'empty';
}

export interface NotANumber extends Asked {
  readonly kind: 'not-a-number';
  /** What is wrong, as a half-sentence: `has 75 minutes of arc`. */
  readonly wrong: string;
  /** What is allowed, as a half-sentence: `minutes from 0 to 59`. */
  readonly allowed: string;
}

/** More than one number can be meant, and guessing would be wrong for somebody. */
export interface Ambiguous extends Asked {
  readonly kind: 'ambiguous';
  /** At least two, each with the text that would say it without doubt. */
  readonly readings: readonly { readonly text: string; readonly quantity: QuantityRead }[];
}

export interface UnknownUnit extends Asked {
  readonly kind: 'unknown-unit';
  /** The part of the text that should be a unit. */
  readonly unitText: string;
  readonly suggestion?: UnitName;
}

export interface WrongDimension extends Asked {
  readonly kind: 'wrong-dimension';
  readonly unit: UnitName;
  readonly found: Dimension;
  readonly expected: Dimension;
}

export interface TooLarge extends Asked {
  readonly kind: 'too-large';
  /** The largest size that is taken, in the shown unit. */
  readonly largest: number;
}

export type ReadingProblem =
  NothingTyped | NotANumber | Ambiguous | UnknownUnit | WrongDimension | TooLarge;

/** What a typed text says: a quantity, or why not. */
export type QuantityReading = QuantityRead | ReadingProblem;
