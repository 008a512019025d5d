import type { Dimension } from '../marks.ts';
import { onPaper, type Frame, type Place } from './frame.ts';
import { at, headPath, pathShape, type Inked } from './shapes.ts';

const OVERSHOOT = 5;
const GAP = 2;
const ROOM_FOR_HEADS = 22;

/**
 * A dimension after ISO 129: extension lines, a thin dimension line with filled heads, turned to
 * point inward from outside where the room between the lines is too small for them.
 */
export function inkDimension(frame: Frame, mark: Dimension): Inked {
  const start = onPaper(frame, mark.from);
  const end = onPaper(frame, mark.to);
  const a = onPaper(frame, mark.fromFoot);
  const b = onPaper(frame, mark.toFoot);
  const inward = Math.hypot(b.x - a.x, b.y - a.y) < ROOM_FOR_HEADS;
  const towardsB = Math.atan2(b.y - a.y, b.x - a.x);
  const towardsA = towardsB + Math.PI;
  const tail = (p: Place, towards: number): Place => ({
    x: p.x + 16 * Math.cos(towards),
    y: p.y + 16 * Math.sin(towards),
  });
  const runs = inward
    ? `M${at(tail(a, towardsA))}L${at(a)}M${at(tail(b, towardsB))}L${at(b)}M${at(a)}L${at(b)}`
    : `M${at(a)}L${at(b)}`;
  const heads = inward
    ? headPath(a, towardsB) + headPath(b, towardsA)
    : headPath(a, towardsA) + headPath(b, towardsB);
  const middle = inward ? tail(b, towardsB) : { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  return {
    shapes: [
      pathShape(mark, extension(start, a) + extension(end, b) + runs, 'thin'),
      pathShape(mark, heads, 'none', true, '-heads'),
    ],
    strokes: [
      { from: start, to: a, weight: 2 },
      { from: end, to: b, weight: 2 },
      { from: inward ? tail(a, towardsA) : a, to: inward ? tail(b, towardsB) : b, weight: 4 },
    ],
    words: {
      text: mark.text,
      at: middle,
      clearance: 2,
      reach: inward ? 0 : Math.abs(b.x - a.x) / 2 + OVERSHOOT,
      strong: true,
    },
  };
}

/** An extension line from just beside the measured point to just past the dimension line. */
function extension(from: Place, foot: Place): string {
  const run = Math.hypot(foot.x - from.x, foot.y - from.y);
  if (run < GAP) return '';
  const [ux, uy] = [(foot.x - from.x) / run, (foot.y - from.y) / run];
  const begin = { x: from.x + GAP * ux, y: from.y + GAP * uy };
  const end = { x: foot.x + OVERSHOOT * ux, y: foot.y + OVERSHOOT * uy };
  return `M${at(begin)}L${at(end)}`;
}
