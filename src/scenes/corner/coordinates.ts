import { momentOf } from '#core/action.ts';
import { actionOf } from '#core/load-cases.ts';
import { DRY_CONCRETE } from '#core/parking.ts';
import { rodLever } from '#core/tie-rod.ts';
import type { Vector } from '#core/vector.ts';
import { trailOfTyre } from './loads.ts';
import type { Standing } from './standing.ts';
import { familyRatio, isFamilyRatio, type FamilyRatio } from '../values/families.ts';

/** A length that places a point of the corner, in metres, or a number of its steering. */
type Coordinate = (standing: Standing) => number;

const ONE_NEWTON = { kind: 'vertical', force: 1 } as const;

const heightOf =
  (point: (standing: Standing) => Vector): Coordinate =>
  (standing) =>
    point(standing).z - standing.geometry.contactCentre.z;

/** From the car's middle plane, the same on both sides. */
const outFromMiddle =
  (point: (standing: Standing) => Vector): Coordinate =>
  (standing) =>
    Math.abs(point(standing).y);

/** Ahead of the wheel centre. */
const aheadOfCentre =
  (point: (standing: Standing) => Vector): Coordinate =>
  (standing) =>
    point(standing).x - standing.corner.wheelCentre.x;

const lower = ({ corner }: Standing): Vector => corner.pivots.lower;
const upper = ({ corner }: Standing): Vector => corner.pivots.upper;

/** Where the points of a corner are, as a worked example says it: heights above the road, distances from the middle, levers. */
export const COORDINATES = {
  lowerOut: outFromMiddle(lower),
  lowerHeight: heightOf(lower),
  lowerAhead: aheadOfCentre(lower),
  upperOut: outFromMiddle(upper),
  upperHeight: heightOf(upper),
  upperAhead: aheadOfCentre(upper),
  contactOut: outFromMiddle(({ geometry }) => geometry.contactCentre),
  groundPointOut: outFromMiddle(({ geometry }) => geometry.groundPoint),
  /** Between both contact centres, the other corner being the mirror image of this one. */
  track: (standing) => 2 * Math.abs(standing.geometry.contactCentre.y),
  pivotsApartAcross: (standing) => Math.abs(lower(standing).y - upper(standing).y),
  pivotsApartUp: (standing) => upper(standing).z - lower(standing).z,
  pivotsApartAlong: (standing) => Math.abs(lower(standing).x - upper(standing).x),
  /** R tan σ: how far the axis leans between the road and the wheel centre. */
  leanToCentre: ({ geometry }) => geometry.spindleOffset - geometry.scrubRadius,
  /** What a newton in the tie rod turns about the axis, without its sign; nought where there is no rod. */
  rodLever: ({ corner: { axis, tieRod } }) => (tieRod ? Math.abs(rodLever(axis, tieRod)) : 0),
  travelPerTurn: ({ gear }) => gear.travelPerTurn,
  rimRadius: ({ gear }) => gear.rimRadius,
  /** r u_z and q u_z: what is left of the two levers about an axis that leans. */
  leverAtRoad: ({ geometry, corner }) => geometry.scrubRadius * corner.axis.direction.z,
  /** (n + t) u_z: how much a newton across the tyre turns about the axis. */
  leverOfSide: ({ geometry, corner, loads }) =>
    (geometry.trail + trailOfTyre(loads.find(({ id }) => id === 'side')?.force ?? 0)) *
    corner.axis.direction.z,
  /** (r tan τ + n tan σ) u_z: how much a newton of wheel load turns about the axis straight ahead. */
  leverOfLoad: ({ ahead }) => Math.abs(momentOf(ahead, actionOf(ahead, ONE_NEWTON))),
  printWidth: ({ printWidth }) => printWidth,
  leverAtCentre: ({ geometry, corner }) => geometry.spindleOffset * corner.axis.direction.z,
  /** How the wheel is held. */
  threadDiameter: ({ fixing }) => fixing.thread.diameter,
  threadPitch: ({ fixing }) => fixing.thread.pitch,
  threadReach: ({ fixing }) => fixing.reach,
  counterThread: ({ fixing }) => fixing.depth,
  circleRadius: ({ fixing }) => fixing.circleRadius,
} as const satisfies Record<string, Coordinate>;

export type CoordinateId = keyof typeof COORDINATES;

export const isCoordinateId = (id: string): id is CoordinateId => Object.hasOwn(COORDINATES, id);

/** Bare numbers of a corner that every page knows. */
const RATIOS = {
  /** By how much power steering divides the torque. */
  assist: ({ gear }) => gear.assist,
  /** Friction of a standing tyre on dry concrete, and the air in it, in bar. */
  dryConcrete: () => DRY_CONCRETE,
  inflation: ({ pressure }) => pressure / 1e5,
} as const satisfies Record<string, Coordinate>;

/** Whole numbers of a corner. */
export const COUNTS = {
  fasteners: ({ fixing }) => fixing.count,
} as const satisfies Record<string, Coordinate>;

export const isCountId = (id: string): id is keyof typeof COUNTS => Object.hasOwn(COUNTS, id);

/** Bare numbers of a corner: of its steering, its bearing, and how its wheel is held. */
export type RatioId = keyof typeof RATIOS | FamilyRatio;

export const isRatioId = (id: string): id is RatioId =>
  Object.hasOwn(RATIOS, id) || isFamilyRatio(id);

/** A bare number of a standing corner. */
export const ratioOf = (id: RatioId, now: Standing): number =>
  isFamilyRatio(id) ? familyRatio(id, now) : RATIOS[id](now);
