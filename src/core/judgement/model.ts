import { changed } from '../change.ts';
import type { Sides } from '../axle.ts';
import { measure } from '../geometry.ts';
import { axleResults, type AxleId } from './axle-results.ts';
import { cornerOfValues } from './corner-of-values.ts';
import {
  AS_IT_STANDS,
  type BenchCorner,
  type FittedCar,
  type Values,
  type WheelChange,
} from './fitted-car.ts';
import { INPUT_IDS, type InputId } from './inputs.ts';
import { JUDGED, JUDGED_IDS, type JudgedId, type ResultPlace } from './judged-quantities.ts';
import { madeChange } from './made-change.ts';
import { mirroredBench, standingCorners } from './standing-corners.ts';
import {
  wheelResults,
  type JudgedWheel,
  type WheelId,
  type WheelResults,
} from './wheel-results.ts';

/** Which result a model gives in which place of its list. */
export interface Slot {
  readonly id: JudgedId;
  readonly place: ResultPlace;
}

const WHEEL_IDS = JUDGED_IDS.filter((id): id is WheelId => JUDGED[id].of === 'wheel');
const AXLE_IDS = JUDGED_IDS.filter((id): id is AxleId => JUDGED[id].of === 'axle');

const at = (place: ResultPlace, ids: readonly JudgedId[]): readonly Slot[] =>
  ids.map((id) => ({ id, place }));

const ALIKE = [...at('left', WHEEL_IDS), ...at('axle', AXLE_IDS)];
const APART = [...at('left', WHEEL_IDS), ...at('right', WHEEL_IDS), ...at('axle', AXLE_IDS)];

/** What a model gives: where both wheels are alike, the left one stands for both. */
export const slotsOf = (alike: boolean): readonly Slot[] => (alike ? ALIKE : APART);

const PLACE_OF: Readonly<Record<string, number>> = Object.fromEntries(
  INPUT_IDS.map((id, i) => [id, i]),
);

/** Values by name from a list in the order of `INPUT_IDS`. */
export const valuesOf =
  (inputs: ArrayLike<number>): Values =>
  (id: InputId) =>
    inputs[PLACE_OF[id] ?? NaN] ?? NaN;

/** Whether both wheels are alike after a change: as the car stands, and in what is done to them. */
export const isAlike = (
  { apart }: Pick<FittedCar, 'apart'>,
  { left, right }: Sides<WheelChange>,
): boolean => !apart && left === right;

/** Nothing done on either side. */
export const NOTHING_DONE: Sides<WheelChange> = { left: AS_IT_STANDS, right: AS_IT_STANDS };

/**
 * A model from the values of the inputs, in the order of `INPUT_IDS` and in SI, to every result of a car with a change
 * made, in the order of `slotsOf(alike)`: the core’s own geometry, statics and bearing lives, nothing of its own.
 *
 * @param alike whether to leave out the right wheel as the left one’s mirror image: as `isAlike` says
 * @returns a model whose results are NaN where a car has not what they are about, or where the numbers make no car
 */
export const modelOf =
  (car: FittedCar, changes: Sides<WheelChange>, alike: boolean) =>
  (inputs: ArrayLike<number>): readonly number[] => {
    const value = valuesOf(inputs);
    if (!(value('hubUp_mm') > 0)) return slotsOf(alike).map(() => NaN);
    const { left, right } = alike ? alikeWheels(car, value, changes) : wheels(car, value, changes);
    const ofLeft = wheelResults(car, value, left);
    const ofAxle = axleResults(value, { left, right });
    const axle = AXLE_IDS.map((id) => ofAxle[id]);
    if (alike) return [...listed(ofLeft), ...axle];
    return [...listed(ofLeft), ...listed(wheelResults(car, value, right)), ...axle];
  };

const listed = (results: WheelResults): readonly number[] => WHEEL_IDS.map((id) => results[id]);

function wheels(car: FittedCar, value: Values, changes: Sides<WheelChange>): Sides<JudgedWheel> {
  const standing = standingCorners(car, value);
  return {
    left: wheelAfter(car, value, standing.left, changes.left),
    right: wheelAfter(car, value, standing.right, changes.right),
  };
}

function alikeWheels(
  car: FittedCar,
  value: Values,
  changes: Sides<WheelChange>,
): Sides<JudgedWheel> {
  const left = wheelAfter(car, value, cornerOfValues(car, value), changes.left);
  return { left, right: { ...left, ...mirroredWheel(left) } };
}

function wheelAfter(
  car: FittedCar,
  value: Values,
  standing: BenchCorner,
  change: WheelChange,
): JudgedWheel {
  const made = madeChange(car, value, change, standing.loadedRadius);
  const corner = changed(standing, made) as BenchCorner;
  return { corner, geometry: measure(corner), change, made };
}

function mirroredWheel({ corner }: JudgedWheel): Pick<JudgedWheel, 'corner' | 'geometry'> {
  const mirror = mirroredBench(corner);
  return { corner: mirror, geometry: measure(mirror) };
}
