import type { Anatomy } from '#core/car/anatomy.ts';
import type { PartPoint } from './part-axes.ts';

const BALL_CIRCLE = 33;

/** Where the bearing's mid-plane lies on the carrier, outboard of the wheel's centre plane. */
const midPlane = ({ loadLineOffset }: Anatomy): number => -loadLineOffset;

/** Hub: mounting flange, pilot and the shaft that runs in the bearing, closed. */
export function hubSection(anatomy: Anatomy): PartPoint[] {
  const { inset } = anatomy;
  const mid = midPlane(anatomy);
  return [
    [inset - 11, 72],
    [inset, 72],
    [inset, 31],
    [inset + 9, 31],
    [inset + 9, -31],
    [inset, -31],
    [inset, -72],
    [inset - 11, -72],
    [inset - 11, -24],
    [mid - 32, -22],
    [mid - 32, 22],
    [inset - 11, 24],
  ];
}

/** Outer ring of the bearing above the spin axis, closed. */
export function outerRing(anatomy: Anatomy): PartPoint[] {
  const mid = midPlane(anatomy);
  return [
    [mid - 28, 36],
    [mid + 28, 36],
    [mid + 28, 46],
    [mid - 28, 46],
  ];
}

/** Centres of the rows' rolling elements, and their radius: where the contact lines leave the pressure centres room. */
export function rollingElements(anatomy: Anatomy): { centres: PartPoint[]; radius: number } {
  const mid = midPlane(anatomy);
  const half = Math.max(9, anatomy.spread / 2 - BALL_CIRCLE * Math.tan(anatomy.contactAngle));
  const centres = [half, -half].flatMap((out): PartPoint[] => [
    [mid + out, BALL_CIRCLE],
    [mid + out, -BALL_CIRCLE],
  ]);
  return { centres, radius: Math.min(7.5, half - 1) };
}

/** Brake disc above the spin axis, closed. */
export function brakeDisc({ inset, rimRadius }: Anatomy): PartPoint[] {
  const edge = rimRadius - 34;
  return [
    [inset - 46, 78],
    [inset - 46, edge],
    [inset - 24, edge],
    [inset - 24, 78],
  ];
}

/**
 * The knuckle: a housing round the bearing with a leg down to the lower pivot and, on double arms, one up to
 * the upper pivot; on a strut a lug that holds the tube. Closed.
 */
export function knuckle(anatomy: Anatomy, lower: PartPoint, upper: PartPoint): PartPoint[] {
  const mid = midPlane(anatomy);
  const [lowerOut, lowerUp, lowerAhead = 0] = lower;
  const legDown: PartPoint[] = [
    [mid + 24, -56],
    [lowerOut + 15, lowerUp + 12, lowerAhead],
    [lowerOut - 15, lowerUp + 12, lowerAhead],
    [mid - 30, -56],
  ];
  const [upperOut, upperUp, upperAhead = 0] = upper;
  const [strutOut, strutUp] = strutFoot(anatomy);
  const legUp: PartPoint[] =
    anatomy.suspension === 'strut'
      ? [
          [strutOut - 4, strutUp - 34],
          [strutOut - 4, strutUp + 36],
          [strutOut + 28, strutUp + 36],
        ]
      : [
          [upperOut - 12, upperUp - 12, upperAhead],
          [upperOut + 12, upperUp - 12, upperAhead],
        ];
  return [...legDown, ...legUp, [mid + 24, 56]];
}

/** Lower end of the strut's tube on the carrier. */
export const strutFoot = (anatomy: Anatomy): PartPoint => [midPlane(anatomy) - 66, 62];
