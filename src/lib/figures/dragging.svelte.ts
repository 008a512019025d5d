import { dragged } from '#scenes/corner/handles.ts';
import type { Sketch } from '#scenes/corner/sketch.ts';
import type { Handle } from '#scenes/marks.ts';
import { offPaper, type Frame } from '#scenes/paper/frame.ts';
import type { Grip } from '#scenes/paper/shapes.ts';
import { PARAMETERS, wholeStep, type ParameterId } from '#scenes/parameters.ts';
import type { Point } from '#scenes/plane.ts';
import type { Exploration } from './exploration.svelte';

interface Grabbed {
  readonly handle: Handle;
  readonly pointer: number;
  readonly from: Point;
  readonly value: number;
  /** The frame at the grab: the paper must not move under the finger. */
  readonly frame: Frame;
  readonly toPaper: DOMMatrix;
}

/** Moves parameters by pointer and keys for one drawing of an exploration. */
export class Dragging {
  readonly #exploration: Exploration;
  #grabbed: Grabbed | undefined;
  /** The value before the keys began to move it, for Escape. */
  #keyed: { readonly id: ParameterId; readonly value: number } | undefined;

  constructor(exploration: Exploration) {
    this.#exploration = exploration;
  }

  grab(event: PointerEvent, { handle }: Grip, frame: Frame, svg: SVGSVGElement): void {
    const matrix = svg.getScreenCTM();
    if (!matrix || event.button !== 0) return;
    event.preventDefault();
    const toPaper = matrix.inverse();
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.#exploration.remember();
    this.#grabbed = {
      handle,
      pointer: event.pointerId,
      from: offPaper(frame, new DOMPoint(event.clientX, event.clientY).matrixTransform(toPaper)),
      value: this.#exploration.setting[handle.parameter],
      frame,
      toPaper,
    };
  }

  move(event: PointerEvent, sketch: Sketch): void {
    const grabbed = this.#grabbed;
    if (grabbed?.pointer !== event.pointerId) return;
    if (event.buttons === 0) {
      // Let go where nobody told us, as outside the window.
      this.release();
      return;
    }
    const { handle, from, value, frame, toPaper } = grabbed;
    const place = new DOMPoint(event.clientX, event.clientY).matrixTransform(toPaper);
    const wanted = dragged(handle, sketch, value, from, offPaper(frame, place));
    this.#exploration.adjust({ [handle.parameter]: wholeStep(handle.parameter, wanted) });
  }

  release(): void {
    this.#grabbed = undefined;
    this.#exploration.settle();
  }

  /** Arrow keys a step, Page keys ten, Home and End to the bounds, Escape back to where the keys began. */
  key(event: KeyboardEvent, handle: Handle, rightward: 1 | -1): void {
    const { parameter: id } = handle;
    const { least, most, step } = PARAMETERS[id];
    const value = this.#exploration.setting[id];
    const next = ((): number | undefined => {
      switch (event.key) {
        case 'ArrowRight':
          return value + rightward * step;
        case 'ArrowLeft':
          return value - rightward * step;
        case 'ArrowUp':
          return value + step;
        case 'ArrowDown':
          return value - step;
        case 'PageUp':
          return value + 10 * step;
        case 'PageDown':
          return value - 10 * step;
        case 'Home':
          return least;
        case 'End':
          return most;
        case 'Escape':
          return this.#keyed?.id === id ? this.#keyed.value : undefined;
        default:
          return undefined;
      }
    })();
    if (next === undefined) return;
    event.preventDefault();
    if (this.#keyed?.id !== id) {
      this.#keyed = { id, value };
      this.#exploration.remember();
    }
    this.#exploration.adjust({ [id]: next });
  }

  /** The keys have left: the next run of them can be undone by itself. */
  leave(): void {
    this.#keyed = undefined;
    this.#exploration.settle();
  }
}
