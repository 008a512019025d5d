import type { Sides } from '../axle.ts';
import type { Anatomy } from '../car/anatomy.ts';
import type { CornerModel } from '../car/car.ts';
import { outerDiameter, rimDiameter } from '../tyre/dimensions.ts';
import { sectionOnRim } from '../tyre/measuring-rim.ts';
import { fromSI } from '../units/convert.ts';
import type { BenchCarDocument, FixingDocument } from './bench-document.ts';
import type { CarSetup } from './bench-setup.ts';
import { fixingOf } from './fit-car.ts';
import type { Values } from './fitted-car.ts';
import { dutyUnder, hubOfValues } from './hub-of-values.ts';
import { standingCorners } from './standing-corners.ts';

/** Of the circle that a row’s balls run on; drawn only. Source: common practice, no source. */
const PITCH_DIAMETER_mm = 56;

/**
 * Holds the wheel of a car of which nobody has said how its own is held: to be put right, and to be drawn until then.
 *
 * Source: common practice, no source.
 */
export const USUAL_FIXING: FixingDocument = {
  fastener: 'bolt',
  thread_mm: 14,
  pitch_mm: 1.5,
  count: 5,
  circle_mm: 112,
  reach_mm: 15,
  depth_mm: 16,
  wheelThickness_mm: 12,
  seat: 'cone',
  torque_Nm: 120,
};

/** Both front corners of a car on the bench at the best estimates of its values, as figures draw them. */
export function cornerModels(
  { car, known }: CarSetup,
  { suspension }: Pick<BenchCarDocument, 'suspension'>,
): Sides<CornerModel> {
  const value: Values = (id) => known[id].value;
  const { left, right } = standingCorners(car, value);
  const parts: Omit<CornerModel, 'corner'> = {
    anatomy: anatomyOf(car, value, suspension),
    gear: {
      travelPerTurn: value('travelPerTurn_mm'),
      rimRadius: value('rimDiameter_mm') / 2,
      assist: value('assist'),
    },
    bearing: {
      hub: hubOfValues(car, value, 0) ?? car.hub.hub,
      duty: dutyUnder(car, value('wheelLoad_N')),
    },
    rollingRadius: (value('rollingRatio') * outerDiameter(car.tyre)) / (2 * Math.PI),
    fixing: car.fixing ? { ...car.fixing, reach: value('reach_mm') } : fixingOf(USUAL_FIXING),
  };
  return {
    left: { corner: left, ...parts },
    right: { corner: right, ...parts },
  };
}

const anatomyOf = (
  { tyre }: CarSetup['car'],
  value: Values,
  suspension: Anatomy['suspension'],
): Anatomy => ({
  suspension,
  tyreWidth: fromSI(sectionOnRim(tyre, value('rimWidth_in')), 'mm'),
  tyreRadius: fromSI(outerDiameter(tyre) / 2, 'mm'),
  rimRadius: fromSI(rimDiameter(tyre) / 2, 'mm'),
  rimWidth: fromSI(value('rimWidth_in'), 'mm'),
  inset: fromSI(value('inset_mm'), 'mm'),
  loadLineOffset: fromSI(value('loadLineOffset_mm'), 'mm'),
  spread: fromSI(value('spread_mm'), 'mm'),
  contactAngle: value('contactAngle_deg'),
  pitchDiameter: PITCH_DIAMETER_mm,
});
