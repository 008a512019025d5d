import { radians } from '../angle.ts';
import { casterOf, inclinationOf } from '../geometry.ts';
import { outerDiameter } from '../tyre/dimensions.ts';
import { measuringRim } from '../tyre/measuring-rim.ts';
import type { Tyre } from '../tyre/tyre.ts';
import { toSI } from '../units/convert.ts';
import type { BaseParts } from './base-parts.ts';
import type { BenchCarDocument } from './bench-document.ts';
import { isCross } from './cross-inputs.ts';
import { INPUT_IDS, INPUTS, inputAbout, type InputGroup, type InputId } from './inputs.ts';
import type { KnownValue, Source } from './known-value.ts';
import { TYPICAL_INSET_mm, TYPICAL_TRACK_mm } from './typical-car.ts';
import { usualPlusMinus } from './usual-plus-minus.ts';

/** Every input with its ± and source. */
export type FilledValues = Readonly<Record<InputId, KnownValue>>;

/** A rim is wider overall than between its flanges: two of about half an inch. Source: common practice, no source. */
const TWO_FLANGES = toSI(25, 'mm');

/**
 * Every input of a car: what its document knows; else what its corner has, as given where the car began as a document
 * and as typical where it began in the garage; else what is typical. So nothing is ever missing, and what is not known has a
 * wide ±; but left and right are alike unless somebody says what they differ by.
 */
export function filledValues(car: BenchCarDocument, tyre: Tyre, base: BaseParts): FilledValues {
  const typed = (id: InputId): number | undefined => {
    const known = car.values[id];
    return known && toSI(known.value, INPUTS[id].unit);
  };
  const values = baseValues(car, tyre, base, typed);
  const known = (id: InputId): KnownValue => {
    const own = car.values[id];
    const { unit } = INPUTS[id];
    if (own !== undefined) {
      const { plusMinus, source } = own;
      return { value: toSI(own.value, unit), plusMinus: toSI(plusMinus, unit), source };
    }
    const source = sourceOf(id, car, base);
    if (isCross(id)) return { value: 0, plusMinus: 0, source };
    return { value: values[id], plusMinus: toSI(usualPlusMinus(id, source), unit), source };
  };
  return Object.fromEntries(INPUT_IDS.map((id) => [id, known(id)])) as FilledValues;
}

/** Inputs that no corner document has. */
const NOT_IN_CORNER: readonly InputId[] = [
  'rimWidth_in',
  'inset_mm',
  'tyreMake_percent',
  'newInset_mm',
  'camberSet_deg',
];

function sourceOf(id: InputId, car: BenchCarDocument, base: BaseParts): Source {
  const group: InputGroup = inputAbout(id).group;
  // Whoever says what holds the wheel has had it in hand.
  if (id === 'reach_mm' && car.fixing !== undefined && car.origin !== 'training-car')
    return 'measured';
  if (NOT_IN_CORNER.includes(id) || car.origin === 'garage') return 'typical';
  if (group === 'steering' && base.missing.has('steering')) return 'typical';
  if ((group === 'hub' || group === 'load') && base.missing.has('hub')) return 'typical';
  if (id === 'track_mm' && !hasTrack(base)) return 'typical';
  return 'given';
}

/** Whether the corner’s y counts from the middle of the car, as far as one can see. */
const hasTrack = ({ contact }: BaseParts): boolean => contact.y >= 0.3 && contact.y <= 1.5;

function baseValues(
  { corner: document, fixing }: BenchCarDocument,
  tyre: Tyre,
  base: BaseParts,
  typed: (id: InputId) => number | undefined,
): Readonly<Record<InputId, number>> {
  const { corner, pivots, tieRod, gear, hub, contact } = base;
  const { lower, upper } = pivots;
  const rimWidth = typed('rimWidth_in') ?? typicalRim(tyre);
  const halfRim = typed('halfRim_mm') ?? (rimWidth + TWO_FLANGES) / 2;
  const hubUp = typed('hubUp_mm') ?? corner.wheelCentre.z - contact.z;
  const inboard = (y: number): number => halfRim + corner.wheelCentre.y - y;
  const up = (z: number): number => hubUp + z - corner.wheelCentre.z;
  const ahead = (x: number): number => x - corner.wheelCentre.x;
  const rolling = toSI(document.wheel.rollingRadius_mm ?? document.wheel.loadedRadius_mm, 'mm');
  return {
    hubUp_mm: hubUp,
    halfRim_mm: halfRim,
    rimWidth_in: rimWidth,
    inset_mm: toSI(TYPICAL_INSET_mm, 'mm'),
    track_mm: hasTrack(base) ? 2 * contact.y : toSI(TYPICAL_TRACK_mm, 'mm'),
    rollingRatio: (2 * Math.PI * rolling) / outerDiameter(tyre),
    camber_deg: radians(document.wheel.camber_deg ?? 0),
    toe_deg: radians(document.wheel.toe_deg ?? 0),
    caster_deg: casterOf(corner.axis),
    inclination_deg: inclinationOf(corner.axis, corner.side),
    lowerIn_mm: inboard(lower.y),
    lowerUp_mm: up(lower.z),
    lowerAhead_mm: ahead(lower.x),
    upperIn_mm: inboard(upper.y),
    upperUp_mm: up(upper.z),
    upperAhead_mm: ahead(upper.x),
    rodAhead_mm: tieRod.outer.x - lower.x,
    travelPerTurn_mm: gear.travelPerTurn,
    rimDiameter_mm: 2 * gear.rimRadius,
    assist: gear.assist,
    wheelLoad_N: straightLoad(hub),
    loadLineOffset_mm: hub.hub.loadLineOffset,
    spread_mm: hub.hub.spread,
    rowRating_N: hub.hub.outboard.dynamicRating,
    contactAngle_deg: hub.hub.outboard.contactAngle,
    reach_mm: fixing === undefined ? 0 : toSI(fixing.reach_mm, 'mm'),
    tyreMake_percent: 0,
    newInset_mm: 0,
    camberSet_deg: 0,
    crossCamber_deg: 0,
    crossCaster_deg: 0,
    crossInclination_deg: 0,
  };
}

/** Wheel load of the phase that most of the distance is driven in, in newtons. */
export const straightLoad = ({ duty }: BaseParts['hub']): number =>
  duty.reduce((most, phase) => (phase.share > most.share ? phase : most)).vertical;

const typicalRim = (tyre: Tyre): number =>
  tyre.kind === 'metric' ? measuringRim(tyre) : toSI(0.75 * tyre.sectionWidth_in, 'in');
