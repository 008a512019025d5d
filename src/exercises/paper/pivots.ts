import { countedFrom, QUANTITIES } from '#core/quantities.ts';
import { mm, phrase, si, sign, type Phrase } from '../phrase.ts';

/** How far above the road the two pivots of a steering axis sit. */
export interface PivotHeights {
  readonly lowerUp_mm: number;
  readonly upperUp_mm: number;
}

/** Two pivots seen from the front: out from the middle of the car. */
export interface PivotsAcross extends PivotHeights {
  readonly lowerOut_mm: number;
  readonly upperOut_mm: number;
}

/** Two pivots seen from the side: ahead of the wheel centre, behind it is negative. */
export interface PivotsAlong extends PivotHeights {
  readonly lowerAhead_mm: number;
  readonly upperAhead_mm: number;
}

/** The step up from the lower pivot to the upper one. */
export const rise_mm = ({ lowerUp_mm, upperUp_mm }: PivotHeights): number =>
  upperUp_mm - lowerUp_mm;

/** The same in metres. */
export const rise = (pivots: PivotHeights): number => si(rise_mm(pivots), 'mm');

/** The step inboard from the lower pivot to the upper one. */
export const across_mm = ({ lowerOut_mm, upperOut_mm }: PivotsAcross): number =>
  lowerOut_mm - upperOut_mm;

/** The step rearward from the lower pivot to the upper one. */
export const along_mm = ({ lowerAhead_mm, upperAhead_mm }: PivotsAlong): number =>
  lowerAhead_mm - upperAhead_mm;

/** `12 mm ahead of the wheel centre`, `12 mm behind the wheel centre`. */
export const fromCentre = (ahead_mm: number): Phrase =>
  phrase`${mm(Math.abs(ahead_mm))} ${countedFrom(sign(ahead_mm, QUANTITIES.trail), 'the wheel centre')}`;
