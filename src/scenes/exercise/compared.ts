import type { Angle, Dimension, Mark } from '../marks.ts';

/** Below this share two lengths look alike on paper. */
const ALIKE = 0.03;

/**
 * How what somebody took compares with what is right, for whoever does not see the two side by side: no numbers, since
 * the right one may still be asked for.
 */
export function comparedWords(taken: Mark, right: Mark | undefined): string | undefined {
  const [a, b] = [extent(taken), right && extent(right)];
  if (a === undefined || b === undefined) return undefined;
  const share = Math.abs(a / b);
  const size =
    Math.abs(share - 1) < ALIKE ? 'as large as' : share > 1 ? 'larger than' : 'smaller than';
  return `${size} the right one${a * b < 0 ? ', and to the other side' : ''}`;
}

/** The signed size of a dimension or an angle. */
function extent(mark: Mark): number | undefined {
  if (mark.kind === 'dimension') return ofDimension(mark);
  return mark.kind === 'angle' ? ofAngle(mark) : undefined;
}

function ofDimension({ fromFoot, toFoot }: Dimension): number {
  const [x, y] = [toFoot.across - fromFoot.across, toFoot.up - fromFoot.up];
  return Math.hypot(x, y) * (Math.sign(Math.abs(x) > Math.abs(y) ? x : y) || 1);
}

const ofAngle = ({ vertex, towards }: Angle): number =>
  Math.atan2(towards.across - vertex.across, towards.up - vertex.up);
