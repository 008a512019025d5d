import { otherSide, type Corner, type Pivots, type TieRod } from './corner.ts';
import type { Line } from './line.ts';
import { mirrored } from './vector.ts';

/** The corner on the other side of the car: the mirror image in the vehicle's middle plane (y → −y). */
export function mirroredCorner(corner: Corner): Corner {
  const { side, axis, pivots, tieRod } = corner;
  return {
    ...corner,
    side: otherSide(side),
    axis: mirroredLine(axis),
    pivots: pivots && mirroredPivots(pivots),
    wheelCentre: mirrored(corner.wheelCentre),
    spin: mirrored(corner.spin),
    tieRod: tieRod && mirroredTieRod(tieRod),
  };
}

const mirroredLine = ({ point, direction }: Line): Line => ({
  point: mirrored(point),
  direction: mirrored(direction),
});

const mirroredPivots = ({ lower, upper }: Pivots): Pivots => ({
  lower: mirrored(lower),
  upper: mirrored(upper),
});

const mirroredTieRod = ({ outer, inner }: TieRod): TieRod => ({
  outer: mirrored(outer),
  inner: mirrored(inner),
});
