import type { Arrow, Circle, Ground, Label, Path, Spot } from '../marks.ts';
import { point } from '../plane.ts';
import { onPaper, rounded, type Frame, type Place } from './frame.ts';
import type { Stroke } from './label-placement.ts';
import { smoothPath } from './smooth-path.ts';
import { ARROW_HEAD, at, circlePath, headPath, pathShape, type Inked } from './shapes.ts';

const SPOT_RADIUS = 3.4;
const RING_RADIUS = 7;
const HATCH_STEP = 12;

export function inkPath(frame: Frame, mark: Path): Inked {
  const places = mark.points.map((p) => onPaper(frame, p));
  const d = mark.smooth ? smoothPath(places, mark.closed ?? false) : straightPath(places, mark);
  return {
    shapes: [pathShape(mark, d, mark.line, mark.filled)],
    strokes: mark.line === 'none' || mark.before || mark.quiet ? [] : strokesOf(places, mark),
  };
}

export function inkCircle(frame: Frame, mark: Circle): Inked {
  const d = circlePath(onPaper(frame, mark.centre), mark.radius * frame.scale);
  return { shapes: [pathShape(mark, d, mark.line, mark.filled)], strokes: [] };
}

export function inkSpot(frame: Frame, mark: Spot): Inked {
  const place = onPaper(frame, mark.at);
  const dot = circlePath(place, mark.ringed ? 1.8 : SPOT_RADIUS);
  const size = mark.ringed ? RING_RADIUS : SPOT_RADIUS;
  return {
    shapes: [
      ...(mark.ringed
        ? [pathShape(mark, circlePath(place, RING_RADIUS), 'outline', true, '-ring')]
        : []),
      pathShape(mark, dot, 'none', true),
    ],
    strokes: [
      { from: { x: place.x - size, y: place.y }, to: { x: place.x + size, y: place.y }, weight: 6 },
    ],
  };
}

/** The road, with the slanted hatching that drawings give to what is solid and goes on. */
export function inkGround(frame: Frame, mark: Ground): Inked {
  const { y } = onPaper(frame, point(0, mark.up));
  const level = rounded(y);
  let hatching = '';
  for (let x = HATCH_STEP; x < frame.width + HATCH_STEP; x += HATCH_STEP) {
    hatching += `M${x} ${level}l-7 7`;
  }
  return {
    shapes: [
      pathShape(mark, `M0 ${level}H${frame.width}`, 'outline'),
      pathShape(mark, hatching, 'thin', false, '-hatch'),
    ],
    strokes: [{ from: { x: 0, y: level }, to: { x: frame.width, y: level }, weight: 3 }],
  };
}

export function inkArrow(frame: Frame, mark: Arrow): Inked {
  const from = onPaper(frame, mark.from);
  const to = onPaper(frame, mark.to);
  const towards = Math.atan2(to.y - from.y, to.x - from.x);
  const neck = { x: to.x - 10 * Math.cos(towards), y: to.y - 10 * Math.sin(towards) };
  return {
    shapes: [
      pathShape(mark, `M${at(from)}L${at(neck)}`, 'heavy'),
      pathShape(mark, headPath(to, towards, ARROW_HEAD), 'none', true, '-head'),
    ],
    strokes: [{ from, to, weight: 4 }],
  };
}

export const inkLabel = (frame: Frame, mark: Label): Inked => ({
  shapes: [],
  strokes: [],
  words: {
    text: mark.text,
    at: onPaper(frame, mark.at),
    clearance: RING_RADIUS,
    here: mark.here ?? false,
    strong: false,
  },
});

const straightPath = (places: readonly Place[], { closed }: Path): string =>
  places.length === 0 ? '' : `M${places.map(at).join('L')}${closed ? 'Z' : ''}`;

/** Axes and outlines matter to words; the more so, the more they carry. */
function strokesOf(places: readonly Place[], mark: Path): Stroke[] {
  const weight = mark.line === 'heavy-chain' ? 5 : 1.5;
  const strokes: Stroke[] = [];
  for (let i = 1; i < places.length; i++) {
    const [from, to] = [places[i - 1], places[i]];
    if (from && to) strokes.push({ from, to, weight });
  }
  return strokes;
}
