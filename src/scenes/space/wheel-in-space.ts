import type { Anatomy } from '#core/car/anatomy.ts';
import { heading, outboard } from '#core/corner.ts';
import { along, type Vector } from '#core/vector.ts';
import { placed, wheelAxes, type PartAxes } from '../corner/part-axes.ts';
import { silhouetteIn } from '../corner/silhouette.ts';
import { path } from '../corner/sketch.ts';
import type { Standing } from '../corner/standing.ts';
import { tyreSurface } from '../corner/wheel-outlines.ts';
import type { Mark } from '../marks.ts';
import type { Stage } from './stage.ts';

/** Corners of a ring. */
const TURN = Array.from({ length: 97 }, (_, i) => (2 * Math.PI * i) / 96);

/** Half the length of the print, and half its width as a share of the tyre's: as it is drawn. */
const PRINT_HALF_LENGTH = 0.075;
const PRINT_SHARE = 0.4;

/** The tyre's outline, filled; pale for the state before. */
export const tyreInSpace = (
  { onto }: Stage,
  { corner }: Standing,
  anatomy: Anatomy,
  before = false,
): Mark =>
  path(silhouetteIn(onto, wheelAxes(corner), tyreSurface(anatomy)), {
    key: before ? 'tyre-before' : 'tyre',
    role: 'wheel',
    filled: !before,
    line: before ? 'thin' : 'outline',
    before,
  });

/** Rings of the wheel (the tyre's edges, the rim's, the hub's) and the spin axis. */
export function ringsInSpace({ line }: Stage, { corner }: Standing, anatomy: Anatomy): Mark[] {
  const axes = wheelAxes(corner);
  const half = anatomy.tyreWidth / 2;
  const edge = anatomy.tyreRadius - 0.13 * (anatomy.tyreRadius - anatomy.rimRadius);
  const rings: readonly (readonly [key: string, out: number, radius: number, dashed: boolean])[] = [
    ['tyre-outer-edge', 0.86 * half, edge, true],
    ['tyre-inner-edge', -0.86 * half, edge, true],
    ['rim-outer-edge', anatomy.rimWidth / 2, anatomy.rimRadius, false],
    ['rim-inner-edge', -anatomy.rimWidth / 2, anatomy.rimRadius, false],
    ['hub', anatomy.inset, 70, false],
  ];
  return [
    ...rings.flatMap(([key, out, radius, dashed]) =>
      line(ring(axes, out, radius), {
        key,
        role: 'wheel',
        seen: 'thin',
        ...(dashed && { hidden: 'hidden' as const }),
      }),
    ),
    ...line(
      [along(corner.wheelCentre, -0.17, corner.spin), along(corner.wheelCentre, 0.2, corner.spin)],
      { key: 'spin-axis', role: 'wheel', seen: 'chain', hidden: 'chain' },
    ),
  ];
}

/** The print on the road. */
export function printInSpace(
  { line }: Stage,
  { corner, geometry }: Standing,
  anatomy: Anatomy,
): Mark[] {
  const [ahead, out] = [heading(corner), outboard(corner)];
  const half = (PRINT_SHARE * anatomy.tyreWidth) / 1000;
  const points = TURN.map((angle) =>
    along(
      along(geometry.contactCentre, PRINT_HALF_LENGTH * Math.cos(angle), ahead),
      half * Math.sin(angle),
      out,
    ),
  );
  return line(points, { key: 'print', role: 'wheel', seen: 'outline', hidden: 'hidden' });
}

const ring = (axes: PartAxes, out: number, radius: number): Vector[] =>
  TURN.map((angle) => placed(axes, [out, radius * Math.cos(angle), radius * Math.sin(angle)]));
