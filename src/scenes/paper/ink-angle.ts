import type { Angle } from '../marks.ts';
import { onPaper, rounded, type Frame, type Place } from './frame.ts';
import { at, headPath, pathShape, type Inked } from './shapes.ts';

const UPRIGHT = -Math.PI / 2;
const ROOM_FOR_HEADS = 0.3;

/** An angular dimension: an upright guide through the vertex, and an arc from it to the measured direction. */
export function inkAngle(frame: Frame, mark: Angle): Inked {
  const vertex = onPaper(frame, mark.vertex);
  const towards = onPaper(frame, mark.towards);
  const direction = Math.atan2(towards.y - vertex.y, towards.x - vertex.x);
  const radius = Math.min(Math.hypot(towards.x - vertex.x, towards.y - vertex.y), 92);
  const on = (angle: number, r = radius): Place => ({
    x: vertex.x + r * Math.cos(angle),
    y: vertex.y + r * Math.sin(angle),
  });
  const opening = direction - UPRIGHT;
  const clockwise = opening > 0;
  const tight = Math.abs(opening) < ROOM_FOR_HEADS;
  const beyond = tight ? (clockwise ? 0.17 : -0.17) : 0;
  const [begin, end] = [UPRIGHT - beyond, direction + beyond];
  const alongArc = (angle: number, forth: boolean): number =>
    angle + (forth === clockwise ? Math.PI / 2 : -Math.PI / 2);
  const heads =
    headPath(on(UPRIGHT), alongArc(UPRIGHT, tight), 7) +
    headPath(on(direction), alongArc(direction, !tight), 7);
  const r = rounded(radius);
  const arc = `M${at(on(begin))}A${r} ${r} 0 0 ${clockwise ? 1 : 0} ${at(on(end))}`;
  const guideEnd = on(UPRIGHT, radius + 14);
  return {
    shapes: [
      pathShape(mark, `M${at(vertex)}L${at(guideEnd)}${arc}`, 'thin'),
      pathShape(mark, heads, 'none', true, '-heads'),
    ],
    strokes: [
      { from: vertex, to: guideEnd, weight: 2 },
      { from: on(begin), to: on(end), weight: 4 },
    ],
    words: { text: mark.text, at: on(end), clearance: 6, strong: true },
  };
}
