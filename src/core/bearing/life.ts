import type { RowKind } from './factors.ts';

/** Exponent p of the life equation: 3 for balls, 10/3 for rollers. */
export const lifeExponent = (kind: RowKind): number => (kind === 'ball' ? 3 : 10 / 3);

/**
 * Basic rating life L10 = (C/P)^p, in million revolutions: what 90 of 100 like bearings reach.
 *
 * @param kind gives the exponent p
 * @param rating C in newtons, more than 0
 * @param load equivalent load P in newtons, 0 or more; without load the life is Infinity
 *
 * Valid only where `withinScope` says so.
 *
 * Source: ISO 281:2007, 5.2 and 7.2; as printed by SKF under "Basic rating life".
 */
export const ratingLife = (kind: RowKind, rating: number, load: number): number =>
  (rating / load) ** lifeExponent(kind);

/**
 * Whether the life equation may be used: P ≤ C/2. Above that the contacts yield and the
 * number is no rating life.
 *
 * Source: ISO 281:2007, scope (from memory).
 */
export const withinScope = (rating: number, load: number): boolean => load <= rating / 2;

/**
 * The distance a wheel rolls in a life: L·10⁶·2π·radius, in kilometres.
 *
 * @param life in million revolutions
 * @param rollingRadius in metres, more than 0
 */
export const lifeDistance_km = (life: number, rollingRadius: number): number =>
  life * 1000 * 2 * Math.PI * rollingRadius;
