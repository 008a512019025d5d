import { circle, path } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { point, type Point } from '../plane.ts';

/** A cord with a bob just above the floor: shows there what lies above. */
export function plumbLine(key: string, from: Point, floor: number, unit: number): Mark[] {
  const bob = floor + 9 * unit;
  return [
    path([from, point(from.across, bob)], {
      key: `plumb-${key}`,
      role: 'guide',
      line: 'thin',
      closed: false,
    }),
    circle(point(from.across, bob - 2.7 * unit), 3.2 * unit, {
      key: `bob-${key}`,
      role: 'guide',
      line: 'outline',
      filled: true,
    }),
  ];
}

/** A straightedge held upright against the rim. */
export const straightedge = (across: number, up: number, unit: number): Mark[] => [
  path([point(across, up - 90 * unit), point(across, up + 90 * unit)], {
    key: 'straightedge',
    role: 'guide',
    line: 'heavy',
    closed: false,
  }),
];
