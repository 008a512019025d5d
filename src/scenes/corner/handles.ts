import { degrees } from '#core/angle.ts';
import { along } from '#core/vector.ts';
import type { Handle } from '../marks.ts';
import type { ParameterId } from '../parameters.ts';
import { point, rightward, type Point } from '../plane.ts';
import type { Setting } from '../setting.ts';
import { wheelAxes } from './part-axes.ts';
import { flat, type Sketch } from './sketch.ts';
import type { Standing } from './standing.ts';
import type { Closeness } from './windows.ts';

/** The place to grab for a parameter in a view, where the view has one. */
export function handleFor(
  parameter: ParameterId,
  sketch: Sketch,
  { corner, geometry }: Standing,
  closeness: Closeness,
): Handle | undefined {
  const { view } = sketch;
  const handle = (at: Point, moves: Handle['moves'], centre?: Point): Handle => ({
    kind: 'handle',
    key: `handle-${parameter}`,
    role: 'guide',
    parameter,
    at,
    moves,
    ...(centre && { centre }),
  });
  const { lower, upper } = corner.pivots;
  switch (parameter) {
    case 'upperInboard':
      return view === 'front' ? handle(flat(sketch, upper), 'across') : undefined;
    case 'lowerOutboard':
    case 'subframe':
      return view === 'front' ? handle(flat(sketch, lower), 'across') : undefined;
    case 'upperRearward':
      return view === 'side' ? handle(flat(sketch, upper), 'across') : undefined;
    case 'lowerForward':
      return view === 'side' ? handle(flat(sketch, lower), 'across') : undefined;
    case 'spacer': {
      if (view !== 'front') return undefined;
      // Close to the road the wheel centre is off the paper: the wheel is then held by its lower half.
      const below = closeness === 'road' ? -0.6 * corner.loadedRadius : 0;
      const at = flat(sketch, along(corner.wheelCentre, below, wheelAxes(corner).up));
      // A spacer carries the wheel out along the spin axis, which turns away as the wheel is steered.
      return { ...handle(at, 'across'), share: Math.abs(corner.spin.y) };
    }
    case 'steer': {
      // Close up, the front of the wheel is off the paper, or comes and goes with the steer.
      if (view !== 'top' || closeness !== 'whole') return undefined;
      // So far ahead that it is easy to turn, and so near that it stays on the paper from lock to lock.
      const ahead = along(corner.wheelCentre, 0.6 * corner.loadedRadius, wheelAxes(corner).ahead);
      return handle(flat(sketch, ahead), 'round', flat(sketch, geometry.axisAtCentre));
    }
    default:
      return undefined;
  }
}

/**
 * The parameter's value when its handle is carried from one point of the drawing to another: the inverse of
 * what the drawing does with the parameter. Steps and bounds are others' business.
 *
 * @param value the parameter's value when the handle was grabbed, in millimetres, degrees or newtons
 */
export function dragged(
  handle: Handle,
  sketch: Sketch,
  value: Setting[ParameterId],
  from: Point,
  to: Point,
): number {
  if (handle.moves === 'round' && handle.centre) {
    // Seen from above with the car's front down, a turn to the left is anticlockwise, as angles count.
    return value + degrees(turnAbout(handle.centre, from, to));
  }
  const { parameter, share = 1 } = handle;
  if (handle.moves === 'up') return value + (to.up - from.up) / share;
  return value + ((to.across - from.across) / share) * growsRightward(parameter, sketch);
}

/** Whether the parameter grows to the right (+1) or to the left (−1) of the drawing; arrow keys go the same way. */
export function growsRightward(parameter: ParameterId, { view, side }: Sketch): 1 | -1 {
  // To the left of the car, whichever corner it is: the reader stands in front of it.
  if (parameter === 'steer' || parameter === 'subframe') return 1;
  const outboardOrForward = rightward(view, side);
  const grows = parameter === 'upperInboard' || parameter === 'upperRearward' ? -1 : 1;
  return (outboardOrForward * grows) as 1 | -1;
}

/** The angle about the centre from one point to another, anticlockwise, within half a turn. */
function turnAbout(centre: Point, from: Point, to: Point): number {
  const fromCentre = (p: Point): Point => point(p.across - centre.across, p.up - centre.up);
  const [a, b] = [fromCentre(from), fromCentre(to)];
  return Math.atan2(a.across * b.up - a.up * b.across, a.across * b.across + a.up * b.up);
}
