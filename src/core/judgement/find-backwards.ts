import { changed, NO_CHANGE, type Change } from '../change.ts';
import type { Corner } from '../corner.ts';
import { measure } from '../geometry.ts';

/** From the least to the most, in metres. */
export interface Band {
  readonly least: number;
  readonly most: number;
}

/** The lengths of a change that the scrub radius follows on a straight line. */
type StraightKey = 'spacer' | 'inset' | 'loadedRadius';

/**
 * How the scrub radius of a corner follows one length of a change, r(t) = r₀ + c t. That is exact: spacer and inset take the
 * contact centre along the spin axis, a radius takes it along the wheel plane, and the point where the axis meets the
 * road goes along on the straight axis.
 */
function scrubSlope(
  corner: Corner,
  key: StraightKey,
  change: Change = NO_CHANGE,
): { readonly at0: number; readonly slope: number } {
  const scrub = (length: number): number =>
    measure(changed(corner, { ...change, [key]: length })).scrubRadius;
  const at0 = scrub(0);
  return { at0, slope: (scrub(STEP) - at0) / STEP };
}

const STEP = 0.01;

/**
 * The lengths of a change that bring the scrub radius into a band; least and most in order. Negative lengths of a spacer are none:
 * they would be inset to gain.
 *
 * @param change what else is done at the wheel
 * @returns undefined where the scrub radius does not follow that length
 */
export function lengthsForScrub(
  corner: Corner,
  key: StraightKey,
  band: Band,
  change: Change = NO_CHANGE,
): Band | undefined {
  const { at0, slope } = scrubSlope(corner, key, change);
  if (!(Math.abs(slope) > 1e-9)) return undefined;
  const [a, b] = [(band.least - at0) / slope, (band.most - at0) / slope];
  return { least: Math.min(a, b), most: Math.max(a, b) };
}

/** A wheel as its makers mark it, in metres. */
export interface WheelSize {
  readonly inset: number;
  readonly rimWidth: number;
}

/** Insets with which another wheel sits like the old one. */
export interface LikeOld {
  /** The middle of the rim, and with it scrub radius and load line, stays where it is. */
  readonly sameCentre: number;
  /** The outer edge of the rim stays where it is: the room to the arch. */
  readonly sameOuter: number;
  /** The inner edge of the rim stays where it is: the room to strut and brake. */
  readonly sameInner: number;
}

/**
 * With which inset a wheel of another width sits like the old one: E′ = E + t for the same centre, and half of what the rim
 * gains in width more (for the same outer edge) or less (for the same inner edge).
 *
 * @param spacer t, thickness of a spacer under the new wheel, in metres
 *
 * Source: geometry.
 */
export function insetLikeOld(old: WheelSize, newRimWidth: number, spacer = 0): LikeOld {
  const half = (newRimWidth - old.rimWidth) / 2;
  const sameCentre = old.inset + spacer;
  return { sameCentre, sameOuter: sameCentre + half, sameInner: sameCentre - half };
}
