import type { Side } from '#core/corner.ts';
import type { Vector } from '#core/vector.ts';

/** A point of a drawing, in millimetres: `across` to the right, `up` upward. */
export interface Point {
  readonly across: number;
  readonly up: number;
}

/**
 * The side a corner is looked at from. The reader stands in front of the car: the front view looks
 * rearward, the top view is what one sees leaning over (forward is down), and the side view looks at the
 * wheel from outboard.
 */
export type View = 'front' | 'side' | 'top';

export const VIEWS: readonly View[] = ['front', 'side', 'top'];

/** What a view is called, and how it is looked at. */
export const VIEW_NAMES: Readonly<Record<View, string>> = {
  front: 'from the front',
  side: 'from the side',
  top: 'from above',
};

/** What a view is called where there is room for one word. */
export const VIEW_WORDS: Readonly<Record<View, string>> = {
  front: 'Front',
  side: 'Side',
  top: 'Above',
};

export const point = (across: number, up: number): Point => ({ across, up });

/** Where a point in vehicle axes (metres) lies in a view. */
export function projected(view: View, side: Side, { x, y, z }: Vector): Point {
  switch (view) {
    case 'front':
      return point(1000 * y, 1000 * z);
    case 'side':
      return point((side === 'left' ? -1000 : 1000) * x, 1000 * z);
    case 'top':
      return point(1000 * y, -1000 * x);
  }
}

/** The way outboard (or, seen from the side, forward) points in the drawing: +1 to the right, −1 to the left. */
export const rightward = (view: View, side: Side): 1 | -1 =>
  (side === 'left') === (view !== 'side') ? 1 : -1;
