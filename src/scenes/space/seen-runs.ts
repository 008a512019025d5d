import { along, minus, type Vector } from '#core/vector.ts';

/** A stretch of a line that is all seen, or all hidden. */
export interface Run {
  readonly hidden: boolean;
  readonly points: readonly Vector[];
}

/** Rounds of halving on the way to the point where a line goes out of sight. */
const HALVINGS = 12;

/** Cuts a line where it goes behind something, and where it comes out again. */
export function seenRuns(points: readonly Vector[], isHidden: (at: Vector) => boolean): Run[] {
  const [first] = points;
  if (!first) return [];
  const runs: { hidden: boolean; points: Vector[] }[] = [];
  let run = { hidden: isHidden(first), points: [first] };
  let last = first;
  for (const at of points.slice(1)) {
    const hidden = isHidden(at);
    if (hidden !== run.hidden) {
      const border = borderBetween(last, at, run.hidden, isHidden);
      run.points.push(border);
      runs.push(run);
      run = { hidden, points: [border] };
    }
    run.points.push(at);
    last = at;
  }
  return [...runs, run];
}

/** Points along a straight line, close enough together that nothing is missed between two of them. */
export const straight = (from: Vector, to: Vector, pieces = 40): Vector[] =>
  Array.from({ length: pieces + 1 }, (_, i) => along(from, i / pieces, minus(to, from)));

function borderBetween(
  from: Vector,
  to: Vector,
  hiddenFrom: boolean,
  isHidden: (at: Vector) => boolean,
): Vector {
  const way = minus(to, from);
  let [same, other] = [0, 1];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (same + other) / 2;
    if (isHidden(along(from, middle, way)) === hiddenFrom) same = middle;
    else other = middle;
  }
  return along(from, other, way);
}
