import { DRY_CONCRETE } from '#core/parking.ts';

/** What a standing tyre may be turned on. */
export interface Surface {
  readonly name: string;
  readonly friction: number;
}

/** Frictions of a sliding tyre: dry from the estimates' own source, the others usual values (from memory). */
export const SURFACES = {
  dry: { name: 'Dry concrete', friction: DRY_CONCRETE },
  wet: { name: 'Wet asphalt', friction: 0.5 },
  ice: { name: 'Ice', friction: 0.1 },
} as const satisfies Record<string, Surface>;

export type SurfaceId = keyof typeof SURFACES;

export const SURFACE_IDS = Object.keys(SURFACES) as readonly SurfaceId[];
