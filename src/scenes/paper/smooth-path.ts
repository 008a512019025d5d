import { rounded, type Place } from './frame.ts';

/** Places closer than this are one. */
const SAME = 1e-12;

/**
 * A smooth path through all places, as SVG text: a centripetal Catmull–Rom spline, each piece written as the
 * Bézier curve that it is. Every page that has a drawing carries this, so it is not left to a library many times as
 * heavy; charts, which come later, are drawn with one.
 *
 * Source: Yuksel, Schaefer and Keyser, Parameterization and applications of Catmull–Rom curves (2011), from memory.
 *
 * @param closed whether it comes back to where it began
 */
export function smoothPath(places: readonly Place[], closed: boolean): string {
  const count = places.length;
  const at = (index: number): Place => {
    const place =
      places[closed ? (index + count) % count : Math.min(count - 1, Math.max(0, index))];
    if (!place) throw new RangeError('a smooth path has no places; allowed: one or more');
    return place;
  };
  // A closed one begins at its second place, and ends there.
  const first = closed ? 1 : 0;
  const pieces = closed ? count : count - 1;
  let path = `M${pair(at(first))}`;
  for (let i = first; i < first + pieces; i++) {
    const [before, from, to, after] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    path += `C${pair(control(before, from, to))},${pair(control(after, to, from))},${pair(to)}`;
  }
  return path;
}

const pair = ({ x, y }: Place): string => `${rounded(x)},${rounded(y)}`;

/** The Bézier control beside `here`, on the way from `here` to `there`, where the curve has come from `back`. */
function control(back: Place, here: Place, there: Place): Place {
  const behind = Math.sqrt(Math.hypot(here.x - back.x, here.y - back.y));
  const ahead = Math.sqrt(Math.hypot(there.x - here.x, there.y - here.y));
  if (behind < SAME) return here;
  const weight = 2 * behind ** 2 + 3 * behind * ahead + ahead ** 2;
  const share = 3 * behind * (behind + ahead);
  const along = (b: number, h: number, t: number): number =>
    (h * weight - b * ahead ** 2 + t * behind ** 2) / share;
  return { x: along(back.x, here.x, there.x), y: along(back.y, here.y, there.y) };
}
