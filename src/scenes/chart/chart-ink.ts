import { curveMonotoneX, line, ticks } from 'd3';
import { writeShortest } from '#core/write-number.ts';
import { rounded, type Place } from '../paper/frame.ts';
import { textWidth } from '../paper/label-placement.ts';
import type { PathShape, Shape, TextShape } from '../paper/shapes.ts';
import type { Scale } from './scale.ts';

/** The part of the paper that a chart's axes enclose. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A smooth line through points that never swings beyond them. */
export const linePath = (points: readonly Place[], x: Scale, y: Scale): string =>
  line<Place>(
    (p) => x(p.x),
    (p) => y(p.y),
  )
    .digits(2)
    .curve(curveMonotoneX)(points) ?? '';

/** The two axes of a chart with their numbers, a faint line at each number upward, and a line at nought. */
export function axes(x: Scale, y: Scale, { left, right, top, bottom }: Box): Shape[] {
  const [least, most] = x.domain;
  const [low, high] = y.domain;
  const across = ticks(least, most, 6);
  const upward = ticks(low, high, 5);
  const strokes =
    across.map((t) => `M${rounded(x(t))} ${bottom}v5`).join('') +
    upward.map((t) => `M${left} ${rounded(y(t))}H${right}`).join('');
  const nought = low < 0 && high > 0 ? `M${left} ${rounded(y(0))}H${right}` : '';
  return [
    path('grid', 'guide', 'faint', strokes),
    path('frame', 'guide', 'thin', `M${left} ${top}V${bottom}H${right}${nought}`),
    ...across.map((t) => text(`x-${t}`, writeShortest(t), x(t), bottom + 15, false)),
    ...upward.map((t) => text(`y-${t}`, writeShortest(t), left - 18, y(t), false)),
  ];
}

export const path = (
  key: string,
  role: PathShape['role'],
  line: PathShape['line'],
  d: string,
): PathShape => ({
  kind: 'path',
  key,
  role,
  line,
  d,
  filled: false,
  quantity: undefined,
  before: false,
});

/** How wide every chart's paper is. */
export const CHART_WIDTH = 400;

/** Words centred on a place, or as near to it as they fit on the paper. */
export const text = (
  key: string,
  words: string,
  x: number,
  y: number,
  strong: boolean,
): TextShape => ({
  kind: 'text',
  key,
  role: 'guide',
  quantity: undefined,
  before: false,
  text: words,
  // A hundredth more, which rounding may take away.
  x: rounded(fitting(x, textWidth(words) / 2 + 0.01)),
  y: rounded(y),
  strong,
});

const fitting = (x: number, half: number): number =>
  Math.max(half, Math.min(CHART_WIDTH - half, x));
