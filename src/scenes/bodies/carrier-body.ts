import type { Anatomy } from '#core/car/anatomy.ts';
import type { Corner } from '#core/corner.ts';
import type { Vector } from '#core/vector.ts';
import { axisLine, axisSpots } from '../corner/axis-marks.ts';
import { carrierAxes, onPart, type PartAxes, type PartPoint } from '../corner/part-axes.ts';
import { circle, flat, outline, type Sketch } from '../corner/sketch.ts';
import type { Standing } from '../corner/standing.ts';
import type { Mark } from '../marks.ts';
import { rightward } from '../plane.ts';
import { discRadius } from './disc.ts';

/** A place on the carrier's face: ahead of the spin axis and above it, in millimetres. */
type Place = readonly [ahead: number, up: number];

/** Radii of the housing round the bearing, and of the bore that the hub leaves. */
const HOUSING = 68;
const BORE = 38;

/** How far above the spin axis a strut's clamp begins and ends, and where its tube is cut off. */
const CLAMP = [60, 150] as const;
const TUBE_END = 250;

/** Where a steering arm ends, of a corner without a tie rod. */
const ARM: Place = [-120, -90];

/** Half of the caliper's angle about the spin axis, and how far above level it sits, in radians. */
const CALIPER_SPREAD = 0.4;
const CALIPER_RISE = 0.3;

/**
 * All that does not turn: knuckle, bearing ring, steering arm, caliper, and the lower end of a strut's tube.
 * Seen from outside with the wheel off, with the steering axis through its pivots.
 */
export function carrierBody(sketch: Sketch, standing: Standing, anatomy: Anatomy): Mark[] {
  const { corner, wheelShift } = standing;
  const axes = carrierAxes(corner, wheelShift);
  const lower = onFace(axes, corner.pivots.lower);
  const upper = onFace(axes, corner.pivots.upper);
  const arm = corner.tieRod ? onFace(axes, corner.tieRod.outer) : ARM;
  const edge = discRadius(anatomy);
  const forth = armIsAhead(corner) ? -1 : 1;
  const draw = (key: string, places: readonly Place[]): Mark =>
    outline(sketch, axes, places.map(partPoint), { key, role: 'part', filled: true });
  const onAxis = (up: number): Place => {
    const share = (up - lower[1]) / (upper[1] - lower[1]);
    return [lower[0] + share * (upper[0] - lower[0]), up];
  };
  const legUp =
    anatomy.suspension === 'strut'
      ? [
          draw('tube', bar(onAxis(CLAMP[0]), onAxis(TUBE_END), 24)),
          draw('leg-up', bar([0, 0], onAxis(CLAMP[1]), 40, 33)),
        ]
      : [draw('leg-up', bar([0, 0], upper, 30, 15))];
  const centre = flat(sketch, axes.origin);
  return [
    draw('arm', bar([0, 0], arm, 16, 11)),
    ...legUp,
    draw('leg-down', bar([0, 0], lower, 30, 15)),
    draw('bracket', bar([0, 0], onDisc(forth, 0, 0.7 * edge), 14)),
    draw('caliper', caliper(edge, forth)),
    circle(centre, HOUSING, { key: 'housing', role: 'part', filled: true }),
    circle(centre, BORE, { key: 'bore', role: 'bearing', line: 'outline' }),
    axisLine(sketch, standing),
    ...axisSpots(sketch, standing).filter(
      ({ key }) => key !== 'upper-pivot' || anatomy.suspension === 'double-arm',
    ),
  ];
}

/** The side of the caliper on paper, +1 to the right: where the steering arm is not. */
export function caliperSide(corner: Corner): 1 | -1 {
  const ahead = rightward('side', corner.side);
  return armIsAhead(corner) ? (ahead > 0 ? -1 : 1) : ahead;
}

const armIsAhead = ({ tieRod, wheelCentre }: Corner): boolean =>
  tieRod !== undefined && tieRod.outer.x > wheelCentre.x;

const partPoint = ([ahead, up]: Place): PartPoint => [0, up, ahead];

function onFace(axes: PartAxes, at: Vector): Place {
  const [, up, ahead = 0] = onPart(axes, at);
  return [ahead, up];
}

/** A bar between two places, with half its width at either end. */
function bar(from: Place, to: Place, half: number, halfEnd = half): Place[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const run = Math.hypot(dx, dy);
  const beside = (at: Place, by: number): Place => [
    at[0] - (by * dy) / run,
    at[1] + (by * dx) / run,
  ];
  return [beside(from, half), beside(to, halfEnd), beside(to, -halfEnd), beside(from, -half)];
}

/** A place on the disc, counted from the middle of the caliper. */
const onDisc = (forth: 1 | -1, angle: number, radius: number): Place => [
  forth * radius * Math.cos(CALIPER_RISE + angle),
  radius * Math.sin(CALIPER_RISE + angle),
];

/** Astride the disc's edge. */
function caliper(edge: number, forth: 1 | -1): Place[] {
  const steps = [-1, -0.5, 0, 0.5, 1].map((step) => step * CALIPER_SPREAD);
  return [
    ...steps.map((angle) => onDisc(forth, angle, edge + 10)),
    ...steps.toReversed().map((angle) => onDisc(forth, angle, 0.62 * edge)),
  ];
}
