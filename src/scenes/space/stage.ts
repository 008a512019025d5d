import type { CornerModel } from '#core/car/car.ts';
import { outboardSign } from '#core/corner.ts';
import { vector, type Vector } from '#core/vector.ts';
import type { Line, Mark, Role, Window } from '../marks.ts';
import type { QuantityId } from '#core/quantities.ts';
import type { Standing } from '../corner/standing.ts';
import { seenFrom, sightOf, type Viewpoint } from './viewpoint.ts';
import { seenRuns } from './seen-runs.ts';
import { hides, wheelSolid } from './wheel-solid.ts';
import type { Point } from '../plane.ts';

/** How a line in space is drawn: one way where it is seen, another where something hides it, if at all. */
export interface SpacePen {
  readonly key: string;
  readonly role: Role;
  readonly seen: Line;
  readonly hidden?: Line;
  readonly quantity?: QuantityId;
  /** Words keep off it. */
  readonly loud?: boolean;
}

/** A corner as it is looked at: how points come onto the paper, and what hides them. */
export interface Stage {
  readonly onto: (at: Vector) => Point;
  /** Marks of a line in space, cut where it goes out of sight. */
  readonly line: (points: readonly Vector[], pen: SpacePen) => Mark[];
}

/** Sets a corner up for a viewpoint. Wheel and road hide what is behind them; carrier and rods are drawn as lines and hide nothing. */
export function stageOf(
  { corner, geometry }: Standing,
  { anatomy }: Pick<CornerModel, 'anatomy'>,
  viewpoint: Viewpoint,
): Stage {
  const sight = sightOf(viewpoint);
  const solid = wheelSolid(corner, anatomy);
  const road = geometry.contactCentre.z - 1e-4;
  const onto = (at: Vector): Point => seenFrom(sight, at);
  const isHidden = (at: Vector): boolean => at.z < road || hides(solid, at, sight.toward);
  return {
    onto,
    line: (points, { key, role, seen, hidden, quantity, loud = false }) =>
      seenRuns(points, isHidden).flatMap((run, i): Mark[] => {
        const line = run.hidden ? hidden : seen;
        if (line === undefined) return [];
        return [
          {
            kind: 'path',
            key: `${key}-${run.hidden ? 'hidden' : 'seen'}-${i}`,
            role,
            line,
            points: run.points.map(onto),
            quiet: !loud,
            ...(quantity && { quantity }),
          },
        ];
      }),
  };
}

/** The window of a viewpoint: it hangs on the car as it stands, and has room for every side of it. */
export function spaceWindow({ corner, anatomy }: CornerModel, viewpoint: Viewpoint): Window {
  const road = corner.wheelCentre.z - corner.loadedRadius;
  const top = Math.max(
    corner.pivots.upper.z + 0.09,
    corner.wheelCentre.z + anatomy.tyreRadius / 1000,
  );
  const middle = vector(
    corner.wheelCentre.x,
    corner.wheelCentre.y - 0.1 * outboardSign(corner.side),
    (top + road) / 2 - 0.02,
  );
  return { centre: seenFrom(sightOf(viewpoint), middle), height: 1000 * (top - road) + 190 };
}
