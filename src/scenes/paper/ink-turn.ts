import type { Turn } from '../marks.ts';
import { onPaper, rounded, type Frame, type Place } from './frame.ts';
import { ARROW_HEAD, at, headPath, pathShape, type Inked } from './shapes.ts';

/** Below this an arrow would be all head: nothing turns there, in radians. */
const NO_TURN = 0.03;

/** The head's share of an arc that is hardly longer than it. */
const MOST_HEAD = 0.75;

/** An arrow bent round a centre: an arc, and a head that stands on the arc's chord so that it stays on the circle. */
export function inkTurn(frame: Frame, mark: Turn): Inked {
  const { radius, from, sweep } = mark;
  if (Math.abs(sweep) < NO_TURN) return { shapes: [], strokes: [] };
  const centre = onPaper(frame, mark.centre);
  const on = (angle: number): Place => ({
    x: centre.x + radius * Math.cos(angle),
    y: centre.y - radius * Math.sin(angle),
  });
  const share = Math.min(ARROW_HEAD / radius, MOST_HEAD * Math.abs(sweep));
  const [tail, middle, neck, tip] = [
    from,
    from + sweep / 2,
    from + sweep - Math.sign(sweep) * share,
    from + sweep,
  ].map(on) as [Place, Place, Place, Place];
  const r = rounded(radius);
  const large = Math.abs(sweep) - share > Math.PI ? 1 : 0;
  const arc = `M${at(tail)}A${r} ${r} 0 ${large} ${sweep > 0 ? 0 : 1} ${at(neck)}`;
  const head = headPath(tip, Math.atan2(tip.y - neck.y, tip.x - neck.x), share * radius);
  return {
    shapes: [pathShape(mark, arc, 'heavy'), pathShape(mark, head, 'none', true, '-head')],
    strokes: [
      { from: tail, to: middle, weight: 4 },
      { from: middle, to: tip, weight: 4 },
    ],
  };
}
