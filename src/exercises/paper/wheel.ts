import { spinAxis } from '#core/corner.ts';
import { rimEdges, type RimEdges } from '#core/rim-edges.ts';
import { vector } from '#core/vector.ts';

/** Some place for a wheel to stand; only what changes is asked for. */
const OUT = 0.75;

/**
 * How far the edges of an upright wheel's rim move outboard when the wheel does and its rim becomes wider, in metres.
 *
 * @param move of the wheel's middle, positive outboard
 */
export function edgesMoved(move: number, oldWidth: number, newWidth: number): RimEdges {
  const at = (out: number, width: number): RimEdges =>
    rimEdges(
      { side: 'left', wheelCentre: vector(0, out, 0.3), spin: spinAxis('left', 0, 0) },
      width,
    );
  const [before, after] = [at(OUT, oldWidth), at(OUT + move, newWidth)];
  return { outer: after.outer - before.outer, inner: after.inner - before.inner };
}
