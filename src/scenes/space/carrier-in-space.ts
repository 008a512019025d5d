import { atHeight } from '#core/line.ts';
import { along, dot, minus, vector, type Vector } from '#core/vector.ts';
import type { Standing } from '../corner/standing.ts';
import type { Mark, Role } from '../marks.ts';
import { straight } from './seen-runs.ts';
import type { Stage } from './stage.ts';

/** How far the axis is drawn below the road and above the upper pivot, in metres. */
const BELOW = 0.07;
const ABOVE = 0.09;

/** Half of the rack that is drawn, in metres. */
const RACK = 0.16;

/** The steering axis through both pivots and on to the road and below; a centre line stays one where it is hidden. */
export const axisInSpace = ({ line }: Stage, { corner, geometry }: Standing): Mark[] => [
  ...line(
    straight(
      atHeight(corner.axis, geometry.contactCentre.z - BELOW),
      along(corner.pivots.upper, ABOVE, corner.axis.direction),
    ),
    { key: 'axis', role: 'axis', seen: 'heavy-chain', hidden: 'chain', loud: true },
  ),
];

/** The points that matter: pivots, axis at the road, wheel centre, contact centre. */
export const spotsInSpace = ({ onto }: Stage, { corner, geometry }: Standing): Mark[] => {
  const spot = (key: string, role: Role, at: Vector, ringed = false): Mark => ({
    kind: 'spot',
    key,
    role,
    at: onto(at),
    ringed,
  });
  return [
    spot('lower-pivot', 'axis', corner.pivots.lower, true),
    spot('upper-pivot', 'axis', corner.pivots.upper, true),
    spot('ground-point', 'axis', geometry.groundPoint),
    spot('wheel-centre', 'wheel', corner.wheelCentre),
    spot('contact-centre', 'wheel', geometry.contactCentre),
  ];
};

/** The carrier between the pivots and the hub, its steering arm, the tie rod, and the rack it ends on. */
export function carrierInSpace({ line }: Stage, { corner, wheelShift }: Standing): Mark[] {
  const { axis, pivots, tieRod, wheelCentre, spin } = corner;
  const hub = along(wheelCentre, -wheelShift, spin);
  const part = { role: 'part', seen: 'outline', hidden: 'hidden' } as const;
  const carrier = [
    ...straight(pivots.lower, hub),
    ...straight(hub, pivots.upper),
    ...straight(pivots.upper, pivots.lower),
  ];
  const marks = line(carrier, { key: 'carrier', ...part });
  if (!tieRod) return marks;
  const { outer, inner } = tieRod;
  const foot = along(axis.point, dot(minus(outer, axis.point), axis.direction), axis.direction);
  const rackEnds = [-RACK, RACK].map((y) => vector(inner.x, inner.y + y, inner.z));
  return [
    ...marks,
    ...line(straight(foot, outer), { key: 'arm', ...part }),
    ...line(straight(outer, inner), { key: 'rod', ...part, seen: 'heavy', loud: true }),
    ...line(rackEnds, { key: 'rack', role: 'part', seen: 'chain', hidden: 'chain' }),
  ];
}
