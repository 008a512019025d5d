import { QUANTITIES } from '#core/quantities.ts';
import { deg, phrase, sign, type Phrase } from '../phrase.ts';
import type { Random } from '../random.ts';

/** Steps of a degree: an alignment sheet is read to a twentieth. */
const STEPS = 20;

/** An angle as an alignment sheet has it; bounds in degrees, both included. */
export const sheetAngle_deg = (random: Random, least: number, most: number): number =>
  random.integer(Math.round(STEPS * least), Math.round(STEPS * most)) / STEPS;

/** A sum of angles of a sheet, back on its grid. */
export const onSheet_deg = (angle_deg: number): number =>
  (Math.round(STEPS * angle_deg) + 0) / STEPS;

/** A camber as it is read out: `−0.5° (top inboard)`. */
export const camberRead = (camber_deg: number): Phrase =>
  phrase`${deg(camber_deg)}${camber_deg === 0 ? '' : ` (top ${sign(camber_deg, QUANTITIES.camber)})`}`;
