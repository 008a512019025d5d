import type { TieRod } from '#core/corner.ts';
import { sizeText, type UnitSystem } from '#core/display.ts';
import { atHeight } from '#core/line.ts';
import { QUANTITIES, type QuantityId } from '#core/quantities.ts';
import { rodDirection } from '#core/tie-rod.ts';
import { along, dot, minus, times, vector, type Vector } from '#core/vector.ts';
import type { Mark, Window } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import { paperUnit } from './measure-place.ts';
import { bar, between, flat, type Sketch } from './sketch.ts';
import { valueOf, type Standing } from './standing.ts';

/** Parts between the carrier and the steering column, as they are named in a drawing. */
export const STEERING_PART_NAMES = {
  arm: 'steering arm',
  rod: 'tie rod',
  rack: 'rack',
} as const;

export type SteeringPartName = keyof typeof STEERING_PART_NAMES;

/** Paper units for a newton: more than for the road's forces, which are many times as large. */
const SCALE = 0.033;
/** The shortest arrow still shows its head; the longest two do not meet along the rod. */
const SHORTEST = 16;
const LONGEST = 58;

/** What an arrow's value begins with: on paper the two stand near each other. */
const ARROW_NAMES = { rodForce: 'rod', rackForce: 'rack' } as const;

/** Below this, in newtons, there is no direction to draw. */
const LEAST_FORCE = 0.5;

/** Half the width of the rack and of its housing, and how far the housing is from the tie rod straight ahead, in mm. */
const RACK = { half: 8, housing: 17, gap: 95, run: 300 };

export const isSteeringPart = (name: string): name is SteeringPartName =>
  Object.hasOwn(STEERING_PART_NAMES, name);

/** Where a part of the steering is named: seen from above, and where the corner has a tie rod. */
export function steeringPlace(
  name: SteeringPartName,
  sketch: Sketch,
  { corner }: Standing,
): Point | undefined {
  const rod = corner.tieRod;
  if (sketch.view !== 'top' || !rod) return undefined;
  const [outer, inner] = [flat(sketch, rod.outer), flat(sketch, rod.inner)];
  switch (name) {
    case 'arm':
      return between(flat(sketch, atHeight(corner.axis, rod.outer.z)), outer, 0.6);
    case 'rod':
      return between(outer, inner, 0.55);
    case 'rack':
      return point(inner.across - 60 * Math.sign(outer.across - inner.across), inner.up);
  }
}

/** The rack, which slides along the car's Y, and the end of its housing, which does not. */
export function rackOutline(sketch: Sketch, { ahead, corner }: Standing): Mark[] {
  if (sketch.view !== 'top' || !corner.tieRod || !ahead.tieRod) return [];
  const inward = Math.sign(corner.tieRod.inner.y - corner.tieRod.outer.y) / 1000;
  const bars = (at: Vector, start: number, half: number, key: string): Mark =>
    bar(
      flat(sketch, { ...at, y: at.y + start * inward }),
      flat(sketch, { ...at, y: at.y + RACK.run * inward }),
      half,
      { key, role: 'part', filled: true, line: 'thin' },
    );
  return [
    bars(corner.tieRod.inner, 0, RACK.half, 'rack'),
    bars(ahead.tieRod.inner, RACK.gap, RACK.housing, 'rack-housing'),
  ];
}

/**
 * Seen from above, where a measure asks: the lever of the tie rod about the axis, what the rod does to the
 * steering arm, and what it does to the rack. A rod in tension pulls both toward its middle.
 */
export function steeringForces(
  sketch: Sketch,
  standing: Standing,
  measures: readonly QuantityId[],
  window: Window,
  units: UnitSystem,
): Mark[] {
  const rod = standing.corner.tieRod;
  if (sketch.view !== 'top' || !rod) return [];
  const inRod = valueOf('rodForce', standing);
  const onRack = valueOf('rackForce', standing);
  const arrow = (id: 'rodForce' | 'rackForce', at: Vector, force: Vector, size: number): Mark[] =>
    measures.includes(id) && Math.abs(size) >= LEAST_FORCE
      ? forceArrow(
          sketch,
          id,
          at,
          force,
          `${ARROW_NAMES[id]} ${sizeText(size, QUANTITIES[id], units)}`,
          window,
        )
      : [];
  return [
    ...(measures.includes('rodForce') ? lever(sketch, standing, rod, window) : []),
    ...arrow('rodForce', rod.outer, times(inRod, rodDirection(rod)), inRod),
    ...arrow('rackForce', rod.inner, vector(0, onRack, 0), onRack),
  ];
}

/** A force, its tail where it acts: as long as it is strong, between what shows its head and what keeps rod and rack apart. */
function forceArrow(
  sketch: Sketch,
  id: 'rodForce' | 'rackForce',
  at: Vector,
  force: Vector,
  text: string,
  window: Window,
): Mark[] {
  const { across, up } = flat(sketch, force);
  const newtons = Math.hypot(across, up) / 1000;
  const size = Math.min(LONGEST, Math.max(SHORTEST, SCALE * newtons)) * paperUnit(window);
  const place = flat(sketch, at);
  const end = point(
    place.across + (size * across) / newtons / 1000,
    place.up + (size * up) / newtons / 1000,
  );
  const common = { role: 'force', quantity: id } as const;
  return [
    { kind: 'arrow', key: `force-${id}`, ...common, from: place, to: end },
    { kind: 'spot', key: `force-${id}-point`, role: 'force', at: place },
    { kind: 'label', key: `force-${id}-name`, ...common, at: between(place, end, 0.5), text },
  ];
}

/** From the axis, at the height of the rod's outer end, square to the rod's line. */
function lever(sketch: Sketch, { corner }: Standing, rod: TieRod, window: Window): Mark[] {
  const axis = atHeight(corner.axis, rod.outer.z);
  const t = rodDirection({ outer: rod.outer, inner: { ...rod.inner, z: rod.outer.z } });
  const foot = along(rod.outer, dot(minus(axis, rod.outer), t), t);
  const band = bar(flat(sketch, axis), flat(sketch, foot), 4 * paperUnit(window), {
    key: 'lever-rod',
    role: 'lever',
    line: 'none',
    filled: true,
  });
  return [{ ...band, quantity: 'rodForce' }];
}
