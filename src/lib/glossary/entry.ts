import type { QuantityId } from '#core/quantities.ts';

/** A term of the course. */
export interface Entry {
  /** Name in addresses. */
  readonly id: string;
  readonly term: string;
  /** What workshops and books also call it. */
  readonly aliases: readonly string[];
  readonly meaning: string;
  /** Where the definition comes from. */
  readonly source: string;
  readonly quantity?: QuantityId;
  /** Lesson that teaches it, by its address. */
  readonly lesson?: string;
}
