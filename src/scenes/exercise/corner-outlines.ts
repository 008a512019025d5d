import { downInWheelPlane, heading, type Corner } from '#core/corner.ts';
import { atHeight } from '#core/line.ts';
import { along, type Vector } from '#core/vector.ts';
import { circle, flat, path, type Sketch } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import type { Point } from '../plane.ts';
import { STUB } from './corner-measures.ts';
import type { CornerPicture } from './corner-picture.ts';

/** Half the width of the tyre that is drawn, and how far the axis goes on beyond the wheel, in metres. */
const HALF_WIDTH = 0.1;
const BEYOND = 0.07;

type Layer = 'now' | 'before' | 'wrong';

const layerPen = (layer: Layer) => ({
  before: layer === 'before',
  ...(layer === 'wrong' && { wrong: true }),
});
const keyIn = (layer: Layer, key: string): string => (layer === 'now' ? key : `${key}-${layer}`);

/** The tyre: cut across from the front and from above, a ring from the side. */
export function tyre(sketch: Sketch, corner: Corner, layer: Layer = 'now'): Mark {
  const { wheelCentre, spin, loadedRadius } = corner;
  const pen = { ...layerPen(layer), key: keyIn(layer, 'tyre'), role: 'wheel' } as const;
  if (sketch.view === 'side')
    return circle(flat(sketch, wheelCentre), 1000 * loadedRadius, { ...pen, filled: true });
  const long = sketch.view === 'front' ? downInWheelPlane(spin) : heading(corner);
  const at = (k: number, w: number): Point =>
    flat(sketch, along(along(wheelCentre, k * loadedRadius, long), w * HALF_WIDTH, spin));
  return path([at(1, 1), at(1, -1), at(-1, -1), at(-1, 1)], { ...pen, filled: true });
}

/** The middle of the wheel, from the road to the top, and the wheel centre. */
export function wheelMiddle(sketch: Sketch, { wheelCentre, spin, loadedRadius }: Corner): Mark {
  const down = downInWheelPlane(spin);
  const at = (k: number): Point => flat(sketch, along(wheelCentre, k * loadedRadius, down));
  return path([at(1), at(-1)], { key: 'middle', role: 'wheel', line: 'chain', closed: false });
}

/** The upright through the wheel centre, where a wheel that nobody speaks of is left out. */
export const upright = (sketch: Sketch, corner: Corner): Mark => ({
  ...wheelMiddle(sketch, corner),
  role: 'guide',
});

export function axis(
  sketch: Sketch,
  corner: Corner,
  of: CornerPicture,
  layer: Layer = 'now',
): Mark {
  const [low, high] = axisEnds(corner, of.axis);
  return path([flat(sketch, low), flat(sketch, high)], {
    ...{ ...layerPen(layer), key: keyIn(layer, 'axis'), role: 'axis' },
    ...{ line: 'heavy-chain', closed: false },
  });
}

function axisEnds(
  { axis: line, wheelCentre, loadedRadius, pivots }: Corner,
  seen: CornerPicture['axis'],
): readonly [Vector, Vector] {
  const from = wheelCentre.z - loadedRadius - BEYOND / 2;
  const to = Math.max(wheelCentre.z + loadedRadius, pivots?.upper.z ?? 0) + BEYOND;
  if (seen === 'pivots' && pivots) return [pivots.lower, pivots.upper];
  return [
    atHeight(line, seen === 'high' ? wheelCentre.z : from),
    atHeight(line, seen === 'low' ? from + STUB * loadedRadius : to),
  ];
}
