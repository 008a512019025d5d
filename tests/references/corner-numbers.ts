import { momentOf } from '#core/action.ts';
import { stanceOf, type Corner, type Stance } from '#core/corner.ts';
import { measure, type Geometry } from '#core/geometry.ts';
import { actionOn, type LoadCase } from '#core/load-cases.ts';
import { steered, turnInPlan } from '#core/steering.ts';

/** What a corner and its loads come to, whoever computes it: metres, radians and N·m. */
export interface CornerNumbers {
  /** Straight ahead. */
  readonly geometry: Measures;
  /** Turned by an angle. */
  readonly steered: Measures & { readonly steer: number; readonly lift: number };
  /** Of each load, in the steered position. */
  readonly moments: readonly number[];
}

export type Measures = Pick<
  Geometry,
  | 'inclination'
  | 'caster'
  | 'camber'
  | 'scrubRadius'
  | 'trail'
  | 'spindleOffset'
  | 'casterOffsetAtCentre'
  | 'axisDistance'
>;

export type CornerCalculation = (
  corner: Corner,
  angle: number,
  loads: readonly LoadCase[],
) => CornerNumbers;

/** The numbers as the core finds them. */
export const coreNumbers: CornerCalculation = (corner, angle, loads) => {
  const now = steered(corner, angle);
  const before = stanceOf(corner);
  const after = stanceOf(now);
  return {
    geometry: measure(corner, before),
    steered: {
      ...measure(now, after),
      steer: turnInPlan(before.ahead, after.ahead),
      lift: before.contact.z - after.contact.z,
    },
    moments: momentsOf(now, after, loads),
  };
};

function momentsOf(corner: Corner, stance: Stance, loads: readonly LoadCase[]): readonly number[] {
  const moments: number[] = [];
  for (const load of loads) moments.push(momentOf(corner, actionOn(corner, stance, load)));
  return moments;
}
