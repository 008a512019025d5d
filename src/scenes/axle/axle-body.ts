import { measure } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import { contactCentre } from '#core/corner.ts';
import { tyreSurface } from '../corner/wheel-outlines.ts';
import { wheelAxes, carrierAxes, onPart, placed } from '../corner/part-axes.ts';
import { silhouette } from '../corner/silhouette.ts';
import { bar, circle, flat, path, type Sketch } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { point } from '../plane.ts';
import type { SidePlace } from './axle-forces.ts';
import type { AxleStanding } from './axle-standing.ts';

/** Half widths of tie rod, arm, rack and the rack's housing, and how far the housing keeps from the rods, in mm. */
const PARTS = { rod: 9, arm: 12, end: 13, rack: 10, housing: 22, gap: 95 };

/** How far the axis is drawn beyond its point at the road and beyond its upper pivot, in metres. */
const BELOW_ROAD = 0.07;
const UP_THE_AXIS = 0.75;

const sketchOf = (side: SidePlace['side']): Sketch => ({ view: 'top', side });

/** Tyre, steering arm, tie rod and axis of one wheel. */
export function cornerBody({ side, axle, anatomy }: SidePlace, wheelShift: number): Mark[] {
  const corner = axle.corners[side];
  const sketch = sketchOf(side);
  const part = { role: 'part', filled: true, line: 'thin' } as const;
  const rod = corner.tieRod;
  const axes = carrierAxes(corner, wheelShift);
  const arm = rod && placed(axes, [Math.min(onPart(axes, rod.outer)[0], -20), 0]);
  return [
    ...(rod && arm
      ? [
          bar(flat(sketch, arm), flat(sketch, rod.outer), PARTS.arm, { key: 'arm', ...part }),
          bar(flat(sketch, rod.outer), flat(sketch, rod.inner), PARTS.rod, {
            key: 'tie-rod',
            ...part,
          }),
          circle(flat(sketch, rod.outer), PARTS.end, { key: 'rod-end', ...part }),
        ]
      : []),
    tyre({ side, axle, anatomy }, false),
    axisLine({ side, axle }, false),
    { kind: 'spot', key: 'contact-centre', role: 'wheel', at: flat(sketch, contactCentre(corner)) },
    {
      kind: 'spot',
      key: 'ground-point',
      role: 'axis',
      at: flat(sketch, measure(corner).groundPoint),
    },
  ];
}

/** Tyre and axis as they were before a change, pale. */
export const cornerBefore = (at: SidePlace): Mark[] => [tyre(at, true), axisLine(at, true)];

/** The rack between both rods, and the housing that it slides in. */
export function rackBody({ corners: { left, right } }: AxleStanding): Mark[] {
  if (!left.tieRod || !right.tieRod) return [];
  const ends = [
    flat(sketchOf('right'), right.tieRod.inner),
    flat(sketchOf('left'), left.tieRod.inner),
  ];
  const [from, to] = ends as [(typeof ends)[0], (typeof ends)[0]];
  const part = { role: 'part', filled: true, line: 'thin' } as const;
  return [
    bar(from, to, PARTS.rack, { key: 'rack', ...part }),
    bar(
      point(from.across + PARTS.gap, from.up),
      point(to.across - PARTS.gap, to.up),
      PARTS.housing,
      { key: 'rack-housing', ...part },
    ),
  ];
}

function tyre(
  { side, axle, anatomy }: Pick<SidePlace, 'side' | 'axle' | 'anatomy'>,
  before: boolean,
): Mark {
  const outline = silhouette(sketchOf(side), wheelAxes(axle.corners[side]), tyreSurface(anatomy));
  return path(outline, {
    key: before ? 'tyre-before' : 'tyre',
    role: 'wheel',
    filled: !before,
    line: before ? 'thin' : 'outline',
    before,
  });
}

function axisLine({ side, axle }: Pick<SidePlace, 'side' | 'axle'>, before: boolean): Mark {
  const corner = axle.corners[side];
  const road = contactCentre(corner).z;
  const line = [
    atHeight(corner.axis, road - BELOW_ROAD),
    atHeight(corner.axis, road + UP_THE_AXIS),
  ];
  return path(
    line.map((at) => flat(sketchOf(side), at)),
    {
      key: before ? 'axis-before' : 'axis',
      role: 'axis',
      closed: false,
      line: before ? 'thin' : 'heavy-chain',
      before,
    },
  );
}
