import type { SurfaceId } from '#scenes/parking/surfaces.ts';

/** What a reader sets about a standing wheel besides the corner itself. */
export class ParkingState {
  surface = $state<SurfaceId>('dry');
  held = $state(true);
  /** Width of the print in millimetres. */
  width = $state(0);

  /** The scale of the width: of any car tyre. */
  static readonly SCALE = {
    name: 'Print width',
    kind: 'length',
    least: 100,
    most: 300,
    step: 5,
  } as const;

  /** @param width of the car's own print, in millimetres */
  constructor(width: number) {
    this.width = width;
  }
}
