import { toSI } from './units/convert.ts';
import type { QuantityId } from './quantities.ts';

/** What is usual for a quantity on cars: both ends in SI, and who says so. */
export interface TypicalRange {
  readonly least: number;
  readonly most: number;
  readonly source: string;
}

const mm = (value: number): number => toSI(value, 'mm');
const deg = (value: number): number => toSI(value, 'deg');

const TRADE = 'common practice, no source';
const REIMPELL =
  'Reimpell, Stoll and Betzler, The Automotive Chassis, 2nd edition, section 3.8 (from memory)';
const SUGIYARTO = 'Sugiyarto, chassis maintenance textbook, PNJ Press, page 79';

/** What the trade says of a change by way of an example. */
export interface TypicalChange {
  readonly spacer: number;
  readonly before: number;
  readonly after: number;
  readonly source: string;
}

/** The same spacer at a usual car's two levers: a rule of thumb. */
export const TYPICAL_CHANGES: Partial<Readonly<Record<QuantityId, TypicalChange>>> = {
  scrubRadius: { spacer: mm(50), before: mm(15), after: mm(65), source: TRADE },
  spindleOffset: { spacer: mm(50), before: mm(50), after: mm(100), source: TRADE },
};

/** Usual values, to hold a result against: orders of size, never limits. */
export const TYPICAL_RANGES: Partial<Readonly<Record<QuantityId, TypicalRange>>> = {
  scrubRadius: { least: mm(-15), most: mm(15), source: TRADE },
  spindleOffset: { least: mm(50), most: mm(100), source: TRADE },
  caster: { least: deg(3), most: deg(8), source: SUGIYARTO },
  inclination: { least: deg(11), most: deg(15.5), source: REIMPELL },
};
