import type { Handle } from '../marks.ts';
import { point } from '../plane.ts';
import { AXLE_CASES } from './axle-cases.ts';
import { forcePoint, reachUp, type SidePlace } from './axle-forces.ts';

/** How far beyond the arrow's head its handle is, and beyond the wheel centre where there is no arrow: units of paper. */
const BEYOND_HEAD = 24;
const WITHOUT_ARROW = 40;

/** The place to grab for the force along the car on one tyre: beyond the head of its arrow. */
export function axleHandle(place: SidePlace): Handle | undefined {
  const { side, look, unit } = place;
  const { loads, rearward, scale } = AXLE_CASES[look.which];
  const parameter = loads[side];
  if (!look.handles.includes(parameter)) return undefined;
  const at = forcePoint(place);
  const reach = reachUp(place);
  const up = reach === 0 ? WITHOUT_ARROW : reach + Math.sign(reach) * BEYOND_HEAD;
  return {
    kind: 'handle',
    key: `handle-${parameter}`,
    role: 'guide',
    parameter,
    at: point(at.across, at.up + up * unit),
    moves: 'up',
    share: rearward * scale * unit,
  };
}
