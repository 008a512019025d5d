import type { CornerModel } from '#core/car/car.ts';
import type { Window } from '../marks.ts';
import { point, type View } from '../plane.ts';
import { flat } from './sketch.ts';

/** How much of the corner is shown: all of it, the part at the road, or the part at the hub. */
export type Closeness = 'whole' | 'road' | 'hub';

export const CLOSENESS_NAMES: Readonly<Record<Closeness, string>> = {
  whole: 'Whole',
  road: 'Road',
  hub: 'Hub',
};

/**
 * The window of a view. It hangs on the car as it stands, not on the setting, so that the paper keeps still
 * while things move on it.
 */
export function windowOf(model: CornerModel, view: View, closeness: Closeness): Window {
  const { corner, anatomy } = model;
  const sketch = { view, side: corner.side };
  const hub = flat(sketch, corner.wheelCentre);
  const ground = -corner.loadedRadius * 1000;
  const inboard = view === 'side' ? 0 : corner.side === 'left' ? -1 : 1;
  if (closeness === 'hub') return { centre: point(hub.across + 20 * inboard, hub.up), height: 330 };
  if (view === 'top') {
    return closeness === 'road'
      ? { centre: point(hub.across + 15 * inboard, hub.up), height: 230 }
      : { centre: point(hub.across + 90 * inboard, hub.up), height: 2 * anatomy.tyreRadius + 90 };
  }
  if (closeness === 'road') {
    return { centre: point(hub.across + 10 * inboard, hub.up + ground + 62), height: 275 };
  }
  const pivot = 1000 * (corner.pivots.upper.z - corner.wheelCentre.z);
  // Room above the pivot for the whole of its handle.
  const top = Math.max(pivot + 0.12 * (pivot - ground), anatomy.tyreRadius + 40);
  // Room below the road for a dimension and its text.
  const bottom = ground - 0.19 * (top - ground);
  return {
    centre: point(hub.across + 70 * inboard, hub.up + (top + bottom) / 2),
    height: top - bottom,
  };
}
