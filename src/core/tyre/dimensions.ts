import { toSI } from '../units/convert.ts';
import type { MetricTyre, Tyre } from './tyre.ts';

/** Nominal section width, in metres. The real one depends on the rim: about 5 mm for each half inch. */
export const sectionWidth = (tyre: Tyre): number =>
  tyre.kind === 'metric' ? toSI(tyre.sectionWidth_mm, 'mm') : toSI(tyre.sectionWidth_in, 'in');

/** Nominal rim diameter, 25.4 mm for each unit of the code, in metres. */
export const rimDiameter = ({ rimCode }: Tyre): number => toSI(rimCode, 'in');

/**
 * Section height, from the rim to the tread, in metres: width × aspect ratio. On a flotation tyre half
 * of what the outer diameter leaves over the rim.
 */
export const sectionHeight = (tyre: Tyre): number =>
  tyre.kind === 'metric'
    ? toSI((tyre.sectionWidth_mm * tyre.aspectRatio_percent) / 100, 'mm')
    : (outerDiameter(tyre) - rimDiameter(tyre)) / 2;

/**
 * Outer diameter of the unloaded tyre, in metres: D = 25.4 mm·code + 2·width·aspect ratio, unrounded,
 * or the marked diameter of a flotation tyre (real ones are about half an inch smaller, from memory).
 *
 * New tyres of one size differ: UN Regulation 30 allows the section height 3 % less to 4 % more
 * (from memory).
 */
export const outerDiameter = (tyre: Tyre): number =>
  tyre.kind === 'metric'
    ? rimDiameter(tyre) + 2 * sectionHeight(tyre)
    : toSI(tyre.outerDiameter_in, 'in');

/**
 * Outer diameter as the tyre standards tabulate it, in whole millimetres (given in metres): D = d + 2H,
 * with the rim diameter d and the section height H each rounded to a whole millimetre, halves up.
 *
 * Source: UN Regulation 30, paragraph 6.1.2, and ISO 4000-1 (from memory).
 */
export function codedOuterDiameter(tyre: MetricTyre): number {
  const { rimCode, sectionWidth_mm, aspectRatio_percent } = tyre;
  const rim_mm = Math.round((rimCode * 254) / 10);
  const height_mm = Math.round((sectionWidth_mm * aspectRatio_percent) / 100);
  return toSI(rim_mm + 2 * height_mm, 'mm');
}
