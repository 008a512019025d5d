import type { SpeedSymbol } from './speed-symbol.ts';

export type Construction = 'radial' | 'diagonal' | 'bias-belted';

/** What is marked behind or around the size, whatever way the size itself is written. */
interface Marking {
  readonly construction: Construction;
  /** ZR in place of R: made for more than 240 km/h. */
  readonly forHighSpeed: boolean;
  /** Nominal rim diameter code: inches, by the name of the old unit only. */
  readonly rimCode: number;
  /** The load index; of two (`104/102`) the first, for a single tyre at each end of the axle. */
  readonly loadIndex?: number;
  /** The second load index, for twin tyres. */
  readonly twinLoadIndex?: number;
  readonly speedSymbol?: SpeedSymbol;
  /** The service description in brackets, `(95Y)`: faster than its speed symbol. */
  readonly fasterThanSymbol: boolean;
  /** XL, RF, Reinforced or Extra Load. */
  readonly extraLoad: boolean;
}

/** `205/55 R16 91V`: width in millimetres, height in percent of it. */
export interface MetricTyre extends Marking {
  readonly kind: 'metric';
  /** No letter, P (passenger, US), LT or C (light commercial), T (temporary spare), HL (high load). */
  readonly use: 'passenger' | 'P' | 'LT' | 'C' | 'T' | 'HL';
  readonly sectionWidth_mm: number;
  readonly aspectRatio_percent: number;
}

/** `31x10.50R15LT`: outer diameter and width in inches. */
export interface FlotationTyre extends Marking {
  readonly kind: 'flotation';
  readonly outerDiameter_in: number;
  readonly sectionWidth_in: number;
}

export type Tyre = MetricTyre | FlotationTyre;
