import { valueText, type UnitSystem } from '#core/display.ts';
import type { QuantityId } from '#core/quantities.ts';
import { direction, length, type Vector } from '#core/vector.ts';
import type { Mark, Window } from '../marks.ts';
import type { LoadId } from '../parameters.ts';
import { point, type Point } from '../plane.ts';
import { endOn } from './end-on.ts';
import { leverMarks } from './lever-marks.ts';
import type { SetLoad } from './loads.ts';
import { paperUnit } from './measure-place.ts';
import { flat, type Sketch } from './sketch.ts';
import type { Standing } from './standing.ts';

/** Paper units for a newton, and the longest arrow. */
const SCALE = 0.022;
const LONGEST = 105;

const MOMENTS: Readonly<Record<LoadId, QuantityId>> = {
  brake: 'brakeMoment',
  drive: 'driveMoment',
  blow: 'blowMoment',
  drag: 'dragMoment',
  side: 'sideMoment',
  weight: 'weightMoment',
};

/**
 * The forces on the carrier where they act, each with its line of action; from above also the lever about the
 * steering axis and the moment it makes. A force that points out of the drawing is
 * a ring with a dot (toward the reader) or a cross (away).
 */
export const forceMarks = (
  sketch: Sketch,
  standing: Standing,
  window: Window,
  units: UnitSystem,
): Mark[] =>
  standing.loads.flatMap((load, before) => {
    const { id, action } = load;
    const ahead = onPaper(sketch, action.force);
    if (!ahead) return fromItsEnd(sketch, load, window, units);
    const levered = { key: id, action, moment: MOMENTS[id], before };
    return [
      ...arrow(sketch, load, ahead, window, units),
      ...(sketch.view === 'top' ? leverMarks(sketch, standing.corner, levered, window, units) : []),
    ];
  });

/** The force's direction on paper; none where it points at the reader or away. */
function onPaper(sketch: Sketch, force: Vector): Point | undefined {
  const { across, up } = flat(sketch, direction(force));
  const size = Math.hypot(across, up) / 1000;
  return size < 0.2 ? undefined : point(across / 1000 / size, up / 1000 / size);
}

function arrow(
  sketch: Sketch,
  { id, action }: SetLoad,
  ahead: Point,
  window: Window,
  units: UnitSystem,
): Mark[] {
  const size = Math.min(LONGEST, SCALE * length(action.force)) * paperUnit(window);
  const from = flat(sketch, action.point);
  const to = point(from.across + size * ahead.across, from.up + size * ahead.up);
  const quantity = MOMENTS[id];
  return [
    { kind: 'arrow', key: `force-${id}`, role: 'force', quantity, from, to },
    { kind: 'spot', key: `force-${id}-point`, role: 'force', at: from },
    {
      kind: 'label',
      key: `force-${id}-name`,
      role: 'force',
      quantity,
      at: to,
      text: valueText(length(action.force), 'force', units),
    },
  ];
}

function fromItsEnd(
  sketch: Sketch,
  { id, action }: SetLoad,
  window: Window,
  units: UnitSystem,
): Mark[] {
  const at = flat(sketch, action.point);
  const away = towardsReader(sketch, action.force) < 0;
  return [
    ...endOn(`force-${id}`, at, 9 * paperUnit(window), away),
    {
      kind: 'label',
      key: `force-${id}-name`,
      role: 'force',
      quantity: MOMENTS[id],
      at,
      text: `${valueText(length(action.force), 'force', units)} ${away ? 'away' : 'toward you'}`,
    },
  ];
}

/** How much of a vector points at the reader of a view. */
function towardsReader({ view, side }: Sketch, { x, y, z }: Vector): number {
  if (view === 'front') return x;
  if (view === 'top') return z;
  return side === 'left' ? y : -y;
}
