import type { PivotsAcross, PivotsAlong } from '../paper/pivots.ts';
import { deg, mm } from '../phrase.ts';
import type { CornerMeasure, MarkedMeasure } from './picture.ts';

const given = (of: CornerMeasure, length_mm: number): MarkedMeasure => ({
  of,
  says: mm(Math.abs(length_mm)).figure,
});

/** Two pivots as a tape measure gives them, seen from the front. */
export const pivotsFromFront = (item: PivotsAcross): readonly MarkedMeasure[] => [
  given('lowerOut', item.lowerOut_mm),
  given('lowerUp', item.lowerUp_mm),
  given('upperOut', item.upperOut_mm),
  given('upperUp', item.upperUp_mm),
];

/** The same seen from the side. */
export const pivotsFromSide = (item: PivotsAlong): readonly MarkedMeasure[] => [
  given('lowerAhead', item.lowerAhead_mm),
  given('lowerUp', item.lowerUp_mm),
  given('upperAhead', item.upperAhead_mm),
  given('upperUp', item.upperUp_mm),
];

interface Leaning {
  readonly inclination_deg: number;
  readonly radius_mm: number;
}

const lean = ({ inclination_deg, radius_mm }: Leaning): readonly MarkedMeasure[] => [
  { of: 'inclination', says: deg(inclination_deg).figure },
  given('loadedRadius', radius_mm),
];

/** A leaning axis that is given where it meets the road. */
export const axisFromRoad = (
  item: Leaning & { readonly scrub_mm: number },
): readonly MarkedMeasure[] => [given('scrubRadius', item.scrub_mm), ...lean(item)];

/** The same, given where it passes the wheel centre. */
export const axisFromCentre = (
  item: Leaning & { readonly spindle_mm: number },
): readonly MarkedMeasure[] => [given('spindleOffset', item.spindle_mm), ...lean(item)];
