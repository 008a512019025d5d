import { toSI } from '../units/convert.ts';
import { sectionWidth } from './dimensions.ts';
import { sectionGain } from './section-on-rim.ts';
import type { MetricTyre, Tyre } from './tyre.ts';

/** Rim width over section width, from each aspect ratio down to the next. */
const SHARES = [
  { aspect: 75, share: 0.7 },
  { aspect: 60, share: 0.75 },
  { aspect: 50, share: 0.8 },
  { aspect: 45, share: 0.85 },
  { aspect: 30, share: 0.9 },
  { aspect: 0, share: 0.92 },
] as const;

/**
 * Width of the rim on which a tyre has the section width that it is marked with, in metres: a share of the section
 * width, rounded to half an inch.
 *
 * Source: ISO 4000-1, ratio of rim width to section width (from memory).
 */
export function measuringRim({ sectionWidth_mm, aspectRatio_percent }: MetricTyre): number {
  const { share } = SHARES.find(({ aspect }) => aspectRatio_percent >= aspect) ?? SHARES[5];
  const halfInches = Math.round((share * sectionWidth_mm) / 12.7);
  return toSI(halfInches / 2, 'in');
}

/**
 * How wide a tyre is on a rim, in metres: what it is marked with, more on a wider rim than its measuring rim. A
 * flotation tyre, which has no such rim in its name, is taken as marked.
 *
 * @param rimWidth between the flanges, in metres
 */
export const sectionOnRim = (tyre: Tyre, rimWidth: number): number =>
  tyre.kind === 'metric'
    ? sectionWidth(tyre) + sectionGain(rimWidth - measuringRim(tyre))
    : sectionWidth(tyre);
