import type { Anatomy } from '#core/car/anatomy.ts';
import { rightward, point, type Point } from '../plane.ts';
import type { Side } from '#core/corner.ts';
import type { Standing } from '../corner/standing.ts';

/** A row by where it lies: outboard +1, inboard −1. */
export type RowSign = 1 | -1;

export const ROW_SIGNS = { outboard: 1, inboard: -1 } as const;

/** What a wheel bearing's drawing is made from, in millimetres from its mid-plane and from the spin axis. */
export interface BearingSizes {
  readonly kind: 'ball' | 'roller';
  /** Half the row pitch, half the pitch diameter, half the pressure-centre spread. */
  readonly halfPitch: number;
  readonly pitchRadius: number;
  readonly halfSpread: number;
  readonly contactAngle: number;
  /** Radius of the balls or rollers, and half the rollers' length. */
  readonly element: number;
  readonly halfLength: number;
  /** Half the width of the rings, the outer ring's outer radius, the inner rings' bore. */
  readonly halfWidth: number;
  readonly outerRadius: number;
  readonly bore: number;
  /** Where the hub's flange ends: wheel or spacer lie against it. */
  readonly face: number;
  /** The wheel's centre plane, before and now. */
  readonly loadLineBefore: number;
  readonly loadLine: number;
  readonly loadedRadius: number;
}

/** Rows, rings and hub as they are drawn: sizes that no document gives are chosen so that they fit between those it gives. */
export function bearingSizes(now: Standing, anatomy: Anatomy): BearingSizes {
  const { kind, contactAngle } = now.hub.outboard;
  const pitchRadius = anatomy.pitchDiameter / 2;
  const halfSpread = anatomy.spread / 2;
  const halfPitch = Math.max(6, halfSpread - pitchRadius * Math.tan(contactAngle));
  const element = kind === 'ball' ? Math.min(0.25 * pitchRadius, halfPitch - 1) : 5.5;
  const halfLength = kind === 'ball' ? element : Math.min(10, halfPitch - 2);
  const halfWidth = halfPitch + halfLength + 4;
  return {
    kind,
    halfPitch,
    pitchRadius,
    halfSpread,
    contactAngle,
    element,
    halfLength,
    halfWidth,
    outerRadius: pitchRadius + element + 8,
    bore: pitchRadius - element - 6,
    face: Math.max(anatomy.loadLineOffset + anatomy.inset, halfWidth + 13),
    loadLineBefore: anatomy.loadLineOffset,
    loadLine: 1000 * now.hub.loadLineOffset,
    loadedRadius: 1000 * now.corner.loadedRadius,
  };
}

/** From (out, up) to the drawing, seen from ahead of the car. */
export type Placing = (out: number, up: number) => Point;

export const placingOn =
  (side: Side): Placing =>
  (out, up) =>
    point(rightward('front', side) * out, up);

/** Centre of a row's ball above (+1) or below (−1) the spin axis. */
export const elementCentre = (
  { halfPitch, pitchRadius }: BearingSizes,
  row: RowSign,
  half: 1 | -1,
): readonly [number, number] => [row * halfPitch, half * pitchRadius];

/** From a row's pressure centre toward its ball and on through the outer ring: a unit step (out, up). */
export const contactDirection = (
  { contactAngle }: BearingSizes,
  row: RowSign,
  half: 1 | -1,
): readonly [number, number] => [-row * Math.sin(contactAngle), half * Math.cos(contactAngle)];

/** Which half of a row carries a radial load of that sign: the top for one that is directed like the wheel load. */
export const loadedHalf = (radial: number): 1 | -1 => (radial < 0 ? -1 : 1);
