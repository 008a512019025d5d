import { along } from '#core/vector.ts';
import { cornerScene, type PartName } from '../corner/corner-scene.ts';
import { paperUnit } from '../corner/measure-place.ts';
import { wheelAxes } from '../corner/part-axes.ts';
import { flat, path, type Sketch } from '../corner/sketch.ts';
import type { Mark, Window } from '../marks.ts';
import { point, rightward, type Point } from '../plane.ts';
import { AS_IT_STANDS } from '../setting.ts';
import {
  across,
  label,
  upright,
  type InputDrawing,
  type InputLook,
  seated,
} from './input-drawing.ts';

export type AboveInput = 'toe_deg' | 'rodAhead_mm' | 'travelPerTurn_mm';

const NAMES: Readonly<Record<AboveInput, readonly PartName[]>> = {
  toe_deg: ['centre'],
  rodAhead_mm: ['lower', 'arm'],
  travelPerTurn_mm: ['rod', 'rack'],
};

/** One front corner from above, the front of the car below: how the wheel points, and what steers it. */
export function aboveInput(id: AboveInput, look: InputLook): InputDrawing {
  const { model, units } = look;
  const names = NAMES[id];
  const scene = cornerScene(model, AS_IT_STANDS, {
    view: 'top',
    closeness: 'whole',
    measures: [],
    names,
    handles: [],
    units,
  });
  const window = id === 'travelPerTurn_mm' ? atTheRack(look) : scene.window;
  return {
    seen: 'One front corner from above, the front of the car below.',
    window,
    marks: [...scene.marks, ...measured(id, look, paperUnit(window)), ...ahead(window)],
  };
}

function measured(id: AboveInput, { model, text, value }: InputLook, unit: number): Mark[] {
  const { corner, anatomy } = model;
  const sketch: Sketch = { view: 'top', side: corner.side };
  const inward = -rightward('top', corner.side);
  switch (id) {
    case 'toe_deg': {
      const axes = wheelAxes(corner);
      const reach = anatomy.tyreRadius / 1000;
      const ends = [1.1, -1.1].map((way) =>
        flat(sketch, along(axes.origin, way * reach, axes.ahead)),
      ) as [Point, Point];
      return [
        path(ends, { key: 'wheel-plane', role: 'wheel', line: 'chain', closed: false }),
        { kind: 'angle', key: 'input', role: 'guide', vertex: ends[0], towards: ends[1], text },
      ];
    }
    case 'rodAhead_mm': {
      const rod = corner.tieRod;
      if (!rod) return [];
      const [lower, outer] = [flat(sketch, corner.pivots.lower), flat(sketch, rod.outer)];
      const foot = Math.min(inward * lower.across, inward * outer.across) + 70 * unit;
      const beside = Math.max(inward * lower.across, inward * outer.across) + 34 * unit;
      return [
        { kind: 'spot', key: 'rod-joint', role: 'guide', at: outer },
        upright(lower, outer, inward * Math.max(foot, beside), text),
      ];
    }
    case 'travelPerTurn_mm': {
      const rod = corner.tieRod;
      if (!rod) return [];
      const end = flat(sketch, rod.inner);
      const after = point(end.across + inward * 1000 * value, end.up);
      const tape = end.up - 30 * unit;
      return [
        path([point(end.across - 30 * inward, tape), point(after.across + 40 * inward, tape)], {
          key: 'tape',
          role: 'guide',
          line: 'heavy',
          closed: false,
        }),
        { kind: 'spot', key: 'rack-end', role: 'guide', at: end },
        { kind: 'spot', key: 'rack-end-after', role: 'guide', at: after, before: true },
        label('after', point(after.across, tape - 6 * unit), 'after one turn'),
        across(end, after, end.up + 44 * unit, text),
      ];
    }
  }
}

/** The part between the wheel and the rack. */
function atTheRack({ model: { corner } }: InputLook): Window {
  const { inner, outer } = corner.tieRod ?? {
    inner: corner.wheelCentre,
    outer: corner.wheelCentre,
  };
  const end = flat({ view: 'top', side: corner.side }, inner);
  const run = Math.abs(1000 * (outer.y - inner.y));
  return { centre: end, height: 0.75 * (2.1 * run + 60) };
}

/** Which way the car goes. */
function ahead(window: Window): Mark[] {
  const unit = paperUnit(window);
  const at = (right: number, up: number): Point =>
    point(window.centre.across + right * unit, window.centre.up + up * unit);
  return [
    { kind: 'arrow', key: 'ahead', role: 'guide', from: at(-180, -86), to: at(-180, -126) },
    seated('ahead', at(-142, -108), 'ahead'),
  ];
}
