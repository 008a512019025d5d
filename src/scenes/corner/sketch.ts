import type { Side } from '#core/corner.ts';
import type { Vector } from '#core/vector.ts';
import type { Circle, Line, Path, Role } from '../marks.ts';
import { point, projected, type Point, type View } from '../plane.ts';
import { placed, type PartAxes, type PartPoint } from './part-axes.ts';

/** How a shape is drawn, short of its points. */
export interface Pen {
  readonly key: string;
  readonly role: Role;
  readonly line?: Line;
  readonly filled?: boolean;
  readonly smooth?: boolean;
  readonly closed?: boolean;
  readonly before?: boolean;
  readonly wrong?: boolean;
}

/** One view of one corner, and how things get into it. */
export interface Sketch {
  readonly view: View;
  readonly side: Side;
}

export const flat = ({ view, side }: Sketch, at: Vector): Point => projected(view, side, at);

/** A part's outline, closed unless the pen says otherwise. */
export const outline = (
  sketch: Sketch,
  axes: PartAxes,
  points: readonly PartPoint[],
  pen: Pen,
): Path =>
  path(
    points.map((p) => flat(sketch, placed(axes, p))),
    pen,
  );

export const path = (points: readonly Point[], pen: Pen): Path => ({
  kind: 'path',
  line: 'outline',
  closed: true,
  ...pen,
  points,
});

export const circle = (centre: Point, radius: number, pen: Pen): Circle => ({
  kind: 'circle',
  key: pen.key,
  role: pen.role,
  line: pen.line ?? 'outline',
  filled: pen.filled ?? false,
  before: pen.before ?? false,
  ...(pen.wrong && { wrong: true }),
  centre,
  radius,
});

/** A bar of constant width between two points of the drawing. */
export function bar(from: Point, to: Point, halfWidth: number, pen: Pen): Path {
  const run = Math.hypot(to.across - from.across, to.up - from.up) || 1;
  const across = (-(to.up - from.up) / run) * halfWidth;
  const up = ((to.across - from.across) / run) * halfWidth;
  const beside = (p: Point, sign: number): Point =>
    point(p.across + sign * across, p.up + sign * up);
  return path([beside(from, 1), beside(to, 1), beside(to, -1), beside(from, -1)], pen);
}

/** The point a share of the way from one to the other. */
export const between = (from: Point, to: Point, share: number): Point =>
  point(from.across + share * (to.across - from.across), from.up + share * (to.up - from.up));

/** A ring about the spin axis, seen as it is turned: 40 points of the circle (out, radius). */
export const ringPoints = (axes: PartAxes, out: number, radius: number): Vector[] =>
  TURN.map(([cos, sin]) => placed(axes, [out, radius * cos, radius * sin]));

const TURN = Array.from({ length: 40 }, (_, i): readonly [number, number] => {
  const angle = (2 * Math.PI * i) / 40;
  return [Math.cos(angle), Math.sin(angle)];
});
