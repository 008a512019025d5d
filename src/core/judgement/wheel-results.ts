import { momentOf } from '../action.ts';
import { hubLoads } from '../bearing/hub.ts';
import { rateHub, type HubRating } from '../bearing/hub-rating.ts';
import { wheelShift, type Change } from '../change.ts';
import { stanceOf } from '../corner.ts';
import { engagement, usualEngagement } from '../fastening/engagement.ts';
import type { Geometry } from '../geometry.ts';
import { actionOn, type LoadCase } from '../load-cases.ts';
import { rimEdges } from '../rim-edges.ts';
import { outerDiameter } from '../tyre/dimensions.ts';
import { loadCapacity_kg } from '../tyre/load-index.ts';
import { sectionOnRim } from '../tyre/measuring-rim.ts';
import { toSI } from '../units/convert.ts';
import { vector } from '../vector.ts';
import { weightOf } from '../weight.ts';
import type { BenchCorner, FittedCar, Values, WheelChange } from './fitted-car.ts';
import { dutyUnder, hubOfValues } from './hub-of-values.ts';
import type { JUDGED, JudgedId } from './judged-quantities.ts';
import { growth } from './made-change.ts';
import { STANDARD_LOADS } from './standard-loads.ts';

/** Results of one wheel. */
export type WheelId = {
  [Id in JudgedId]: (typeof JUDGED)[Id]['of'] extends 'wheel' ? Id : never;
}[JudgedId];

export type WheelResults = Readonly<Record<WheelId, number>>;

/** A wheel of a car as it stands or changed, with what has been done to it. */
export interface JudgedWheel {
  readonly corner: BenchCorner;
  readonly geometry: Geometry;
  readonly change: WheelChange;
  readonly made: Change;
}

/** What one wheel is judged by; NaN for what this car has not, or what is not known of it. */
export function wheelResults(car: FittedCar, value: Values, wheel: JudgedWheel): WheelResults {
  const { geometry } = wheel;
  return {
    scrubRadius: geometry.scrubRadius,
    spindleOffset: geometry.spindleOffset,
    trail: geometry.trail,
    inclination: geometry.inclination,
    caster: geometry.caster,
    camber: geometry.camber,
    includedAngle: geometry.includedAngle,
    ...moments(car, value, wheel),
    ...bearing(car, value, wheel),
    ...room(car, value, wheel),
    ...rolling(car, value, wheel),
    ...threads(car, value, wheel),
  };
}

function moments({ driven }: FittedCar, value: Values, { corner }: JudgedWheel) {
  const load = value('wheelLoad_N');
  const { brake, drive, recuperation, blow } = STANDARD_LOADS;
  const stance = stanceOf(corner);
  const moment = (by: LoadCase): number => momentOf(corner, actionOn(corner, stance, by));
  const throughShaft = (share: number): number =>
    driven ? moment({ kind: 'shaft', force: share * load }) : NaN;
  return {
    brakeMoment: moment({ kind: 'brake-on-carrier', force: brake.share * load }),
    driveMoment: throughShaft(drive.share),
    recuperationMoment: throughShaft(-recuperation.share),
    blowMoment: moment({ kind: 'impact', force: vector(-blow.share * load, 0, 0) }),
  };
}

function bearing(car: FittedCar, value: Values, { corner, made, change }: JudgedWheel) {
  const load = value('wheelLoad_N');
  const hub = hubOfValues(car, value, wheelShift(made));
  if (hub === undefined || !(load >= 0)) return NO_BEARING;
  const { loadedRadius } = corner;
  const { radial } = hubLoads(hub, { vertical: load, inward: 0 }, loadedRadius);
  const rating = rateHub(hub, dutyUnder(car, load), {
    loadedRadius,
    rollingRadius: circumference(car, value, change) / (2 * Math.PI),
  });
  return {
    outboardRadial: radial.outboard,
    inboardRadial: radial.inboard,
    outboardMeanLoad: rating.outboard.meanLoad,
    inboardMeanLoad: rating.inboard.meanLoad,
    ...lives(rating),
  };
}

const lives = ({ outboard, inboard, life }: HubRating) => ({
  outboardLife: toSI(outboard.life, 'Mrev'),
  inboardLife: toSI(inboard.life, 'Mrev'),
  hubLife: toSI(life, 'Mrev'),
});

const NO_BEARING = {
  outboardRadial: NaN,
  inboardRadial: NaN,
  outboardMeanLoad: NaN,
  inboardMeanLoad: NaN,
  outboardLife: NaN,
  inboardLife: NaN,
  hubLife: NaN,
} as const;

function room(car: FittedCar, value: Values, { corner, change }: JudgedWheel) {
  const rimWidth = change.rimWidth ?? value('rimWidth_in');
  const rim = rimEdges(corner, rimWidth);
  const tyre = rimEdges(corner, sectionOnRim(change.tyre ?? car.tyre, rimWidth));
  return {
    outerEdge: rim.outer,
    innerEdge: rim.inner,
    outerSidewall: tyre.outer,
    innerSidewall: tyre.inner,
  };
}

const circumference = (car: FittedCar, value: Values, change: WheelChange): number =>
  value('rollingRatio') * outerDiameter(car.tyre) * growth(car, value, change);

function rolling(car: FittedCar, value: Values, { corner, change }: JudgedWheel) {
  const { loadIndex } = change.tyre ?? car.tyre;
  return {
    loadedRadius: corner.loadedRadius,
    rollingCircumference: circumference(car, value, change),
    trueSpeed: growth(car, value, change),
    loadShare:
      loadIndex === undefined ? NaN : value('wheelLoad_N') / weightOf(loadCapacity_kg(loadIndex)),
  };
}

function threads({ fixing }: FittedCar, value: Values, { change }: JudgedWheel) {
  if (fixing === undefined) return { engagement: NaN, engagementSpare: NaN };
  const thicker = (change.wheelThickness ?? fixing.wheelThickness) - fixing.wheelThickness;
  const reach = value('reach_mm') - thicker;
  const held = engagement({ reach, depth: fixing.depth }, change.spacer);
  return { engagement: held, engagementSpare: held - usualEngagement(fixing.thread) };
}
