import { path } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { point } from '../plane.ts';

/** An upright rectangle of the drawing plane, in millimetres. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** Between two lines of a hatching, measured along the level. */
const STEP = 3.2;

/**
 * Section lining after ISO 128: thin lines at 45 degrees, `rising` to the right or falling, so that neighbours
 * tell apart.
 */
export function hatching(box: Box, key: string, role: Mark['role'], rising: boolean): Mark[] {
  const { left, right, bottom, top } = box;
  const height = top - bottom;
  const marks: Mark[] = [];
  // Lines start on whole steps of the paper, so that they keep still while a box grows.
  for (let foot = STEP * Math.ceil((left - height) / STEP); foot < right; foot += STEP) {
    const from = Math.max(foot, left);
    const to = Math.min(foot + height, right);
    if (to - from < 0.2) continue;
    const up = (across: number): number =>
      rising ? bottom + (across - foot) : top - (across - foot);
    marks.push(
      path([point(from, up(from)), point(to, up(to))], {
        key: `${key}-${Math.round(foot / STEP)}`,
        role,
        line: 'faint',
        closed: false,
      }),
    );
  }
  return marks;
}

export const corners = ({ left, right, bottom, top }: Box) => [
  point(left, bottom),
  point(right, bottom),
  point(right, top),
  point(left, top),
];

/** The same box below the bolt’s axis. */
export const mirrored = (box: Box): Box => ({ ...box, bottom: -box.top, top: -box.bottom });
