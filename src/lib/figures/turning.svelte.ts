import type { Side } from '#core/corner.ts';
import { allowedViewpoint, firstViewpoint, type Viewpoint } from '#scenes/space/viewpoint.ts';

/** Degrees for each pixel that is dragged. */
const ROUND = 0.45;
const ABOVE = 0.35;

/** The reader's viewpoint, and the drag that changes it: the drawing goes with the finger. */
export class Turning {
  viewpoint: Viewpoint;
  readonly #side: Side;
  #from = $state.raw<{ readonly x: number; readonly y: number; readonly viewpoint: Viewpoint }>();
  readonly dragging: boolean = $derived(this.#from !== undefined);

  constructor(side: Side) {
    this.#side = side;
    this.viewpoint = $state.raw(firstViewpoint(side));
  }

  set(change: Partial<Viewpoint>): void {
    this.viewpoint = allowedViewpoint({ ...this.viewpoint, ...change });
  }

  reset(): void {
    this.viewpoint = firstViewpoint(this.#side);
  }

  grab(event: PointerEvent & { currentTarget: Element }): void {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    this.#from = { x: event.clientX, y: event.clientY, viewpoint: this.viewpoint };
  }

  move({ clientX, clientY }: PointerEvent): void {
    const from = this.#from;
    if (!from) return;
    this.set({
      round: from.viewpoint.round - ROUND * (clientX - from.x),
      above: from.viewpoint.above + ABOVE * (clientY - from.y),
    });
  }

  release(): void {
    this.#from = undefined;
  }
}
