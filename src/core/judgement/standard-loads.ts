/** A load that every car on the bench is judged under: a share of the wheel load, so that cars compare. */
export interface StandardLoad {
  /** Force over the standing load of one front wheel. */
  readonly share: number;
  readonly about: string;
}

/**
 * The standard load cases. Orders of size that the trade reckons with, the same for every car; none is the most that can
 * happen.
 *
 * Source: common practice, no source.
 */
export const STANDARD_LOADS = {
  brake: { share: 0.8, about: 'hard braking on a dry road, by the brake on the carrier' },
  brakeOnIce: { share: 0.1, about: 'the same pedal with this wheel on ice' },
  drive: { share: 0.4, about: 'driving hard, through a shaft along the spin axis' },
  recuperation: { share: 0.15, about: 'braking through the shaft, by motor or engine' },
  blow: { share: 1, about: 'a blow rearward at the wheel centre, as from an edge' },
} as const satisfies Record<string, StandardLoad>;
