import type { Mark } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import { circle, path } from './sketch.ts';

/** A force seen from its end: a ring with a dot where it points at the reader, with a cross where it points away. */
export function endOn(key: string, at: Point, radius: number, away: boolean): Mark[] {
  const pen = { role: 'force', line: 'outline' } as const;
  const slant = 0.7 * radius;
  const stroke = (sign: 1 | -1): Mark =>
    path(
      [
        point(at.across - slant, at.up - sign * slant),
        point(at.across + slant, at.up + sign * slant),
      ],
      { key: `${key}-${sign}`, closed: false, ...pen },
    );
  return [
    circle(at, radius, { key, filled: true, ...pen }),
    ...(away
      ? [stroke(1), stroke(-1)]
      : [circle(at, 0.3 * radius, { key: `${key}-dot`, filled: true, ...pen, line: 'none' })]),
  ];
}
