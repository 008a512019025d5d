import { USUAL_DOUBT } from '../own-car/readings.ts';
import { fromSI } from '../units/convert.ts';
import type { InputId } from './inputs.ts';
import type { Source } from './known-value.ts';

/** How far off an input may be by where it comes from, as ±, in its document’s unit. */
interface Usual {
  readonly measured: number;
  /** From a sheet, a drawing or a marking. */
  readonly sheet: number;
  /** Where nothing is known of this car. */
  readonly typical: number;
}

const mm = (length: number): number => fromSI(length, 'mm');
const deg = (angle: number): number => fromSI(angle, 'deg');

/**
 * What is usual. Measured with simple tools as in the lesson about measuring one’s own car; sheets about as well as two machines
 * agree; typical as wide as cars differ.
 *
 * Source: common practice, no source; typical inclination and caster from the ranges in typical-ranges.ts.
 */
const USUAL: Readonly<Record<InputId, Usual>> = {
  hubUp_mm: { measured: mm(USUAL_DOUBT.hubUp), sheet: 3, typical: 10 },
  halfRim_mm: { measured: mm(USUAL_DOUBT.halfRim), sheet: 2, typical: 4 },
  rimWidth_in: { measured: 0.1, sheet: 0, typical: 0.75 },
  inset_mm: { measured: 1.5, sheet: 0.5, typical: 12 },
  track_mm: { measured: 3, sheet: 5, typical: 60 },
  rollingRatio: { measured: 0.01, sheet: 0.03, typical: 0.076 },
  camber_deg: { measured: deg(USUAL_DOUBT.camber), sheet: 0.1, typical: 0.75 },
  toe_deg: { measured: 0.1, sheet: 0.05, typical: 0.15 },
  caster_deg: { measured: 0.75, sheet: 0.3, typical: 2.5 },
  inclination_deg: { measured: 0.75, sheet: 0.3, typical: 2.25 },
  lowerIn_mm: { measured: mm(USUAL_DOUBT.lowerIn), sheet: 2, typical: 25 },
  lowerUp_mm: { measured: mm(USUAL_DOUBT.lowerUp), sheet: 3, typical: 25 },
  lowerAhead_mm: { measured: 4, sheet: 2, typical: 12 },
  upperIn_mm: { measured: mm(USUAL_DOUBT.upperIn), sheet: 3, typical: 35 },
  upperUp_mm: { measured: mm(USUAL_DOUBT.upperUp), sheet: 3, typical: 40 },
  upperAhead_mm: { measured: 5, sheet: 3, typical: 25 },
  rodAhead_mm: { measured: 4, sheet: 2, typical: 25 },
  travelPerTurn_mm: { measured: 1.5, sheet: 0.5, typical: 8 },
  rimDiameter_mm: { measured: 3, sheet: 1, typical: 20 },
  assist: { measured: 1, sheet: 1, typical: 2 },
  wheelLoad_N: { measured: 100, sheet: 250, typical: 1200 },
  loadLineOffset_mm: { measured: 3, sheet: 1, typical: 10 },
  spread_mm: { measured: 4, sheet: 1, typical: 14 },
  rowRating_N: { measured: 1000, sheet: 500, typical: 8000 },
  contactAngle_deg: { measured: 3, sheet: 0.5, typical: 5 },
  reach_mm: { measured: 0.5, sheet: 0.5, typical: 3 },
  tyreMake_percent: { measured: 0.2, sheet: 0.5, typical: 1 },
  newInset_mm: { measured: 0.5, sheet: 1, typical: 1 },
  camberSet_deg: { measured: 0.1, sheet: 0.1, typical: 0.15 },
  // What both readings of one tool share goes out of their difference; what is left is about what one of them has.
  crossCamber_deg: { measured: deg(USUAL_DOUBT.camber), sheet: 0.1, typical: 0.5 },
  crossCaster_deg: { measured: 0.75, sheet: 0.3, typical: 0.5 },
  crossInclination_deg: { measured: 0.75, sheet: 0.3, typical: 0.5 },
};

/** By eye one is some three times as far off as with a tool. Source: common practice, no source. */
const BY_EYE = 3;

/** The ± that is offered for an input, in its document’s unit: typed over where somebody knows better. */
export function usualPlusMinus(input: InputId, source: Source): number {
  const { measured, sheet, typical } = USUAL[input];
  switch (source) {
    case 'given':
      return 0;
    case 'measured':
      return measured;
    case 'sheet':
      return sheet;
    case 'typical':
      return typical;
    case 'guess':
      return Math.min(typical, BY_EYE * measured);
  }
}
