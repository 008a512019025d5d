import type { UnitSystem } from '#core/display.ts';
import type { SurfaceId } from './surfaces.ts';

/** How a standing wheel is turned, and on what. */
export interface ParkingLook {
  /** Width of the print in millimetres. */
  readonly width_mm: number;
  readonly surface: SurfaceId;
  /** With the brake held the tyre is dragged round the axis; without, it may roll. */
  readonly held: boolean;
  readonly units: UnitSystem;
}
