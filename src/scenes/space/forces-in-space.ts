import { valueText, type UnitSystem } from '#core/display.ts';
import { along, length, type Vector } from '#core/vector.ts';
import type { Standing } from '../corner/standing.ts';
import type { Mark } from '../marks.ts';
import type { Stage } from './stage.ts';

/** Metres for a newton, and the longest arrow. */
const SCALE = 5e-5;
const LONGEST = 0.25;

/** Below this, in millimetres of the drawing, an arrow points at the reader and is all head. */
const SHORTEST = 20;

/** The forces on the wheel where they act. */
export const forcesInSpace = ({ onto }: Stage, { loads }: Standing, units: UnitSystem): Mark[] =>
  loads.flatMap(({ id, action }): Mark[] => {
    const size = length(action.force);
    const tip: Vector = along(action.point, Math.min(SCALE, LONGEST / size), action.force);
    const [from, to] = [onto(action.point), onto(tip)];
    const seen = Math.hypot(to.across - from.across, to.up - from.up) >= SHORTEST;
    return [
      ...(seen ? [{ kind: 'arrow', key: `force-${id}`, role: 'force', from, to } as const] : []),
      { kind: 'spot', key: `force-${id}-point`, role: 'force', at: from },
      {
        kind: 'label',
        key: `force-${id}-name`,
        role: 'force',
        at: to,
        text: valueText(size, 'force', units),
      },
    ];
  });
