import { momentOf } from '#core/action.ts';
import { radians } from '#core/angle.ts';
import type { Hub } from '#core/bearing/hub.ts';
import type { CornerModel } from '#core/car/car.ts';
import { isChangeQuantity } from '#core/change-quantities.ts';
import { camberByRule, camberFromCaster, camberFromInclination } from '#core/camber-by-rule.ts';
import { changed, wheelShift } from '#core/change.ts';
import { DRY_CONCRETE, parkingEstimates, type Parked } from '#core/parking.ts';
import { outboardSign, type Corner, type Pivots } from '#core/corner.ts';
import type { Fixing } from '#core/fastening/fixing.ts';
import { frontLift } from '#core/front-lift.ts';
import { camberOf, measure, type Geometry } from '#core/geometry.ts';
import { handwheelTorque, rimForce, type SteeringGear } from '#core/handwheel.ts';
import { lineThrough } from '#core/line.ts';
import type { QuantityId } from '#core/quantities.ts';
import { steeredOnRack } from '#core/rack-travel.ts';
import { reactionTo, type RodReaction } from '#core/reaction.ts';
import { selfReturn } from '#core/self-return.ts';
import { liftBetween, rotationForSteer, steerBetween, steered } from '#core/steering.ts';
import { subframeMoved } from '#core/subframe.ts';
import { toeOf } from '#core/toe.ts';
import { rackSense } from '#core/tie-rod.ts';
import { plus, vector } from '#core/vector.ts';
import type { LoadId } from '../parameters.ts';
import type { Setting } from '../setting.ts';
import { familyValue, isFamilyQuantity } from '../values/families.ts';
import { loadsOn, trailOfTyre, type SetLoad } from './loads.ts';
import { byChange } from './change-values.ts';

/** A corner as the reader has set it: what the figure draws and what the numbers are read from. */
export interface Standing {
  readonly corner: Corner & { readonly pivots: Pivots };
  /** The same corner straight ahead. */
  readonly ahead: Corner;
  readonly geometry: Geometry;
  /** How far the wheel centre has moved out along the spin axis on the hub, in metres. */
  readonly wheelShift: number;
  /** Rotation about the axis, the road-wheel steer that it makes, and the lift it brings: radians and metres. */
  readonly rotation: number;
  readonly steer: number;
  readonly lift: number;
  readonly loads: readonly SetLoad[];
  readonly gear: SteeringGear;
  /** The wheel bearing, its load line where spacer and wheel have brought it; the pitch diameter in metres. */
  readonly hub: Hub;
  readonly pitchDiameter: number;
  /** What stands, and how it is set: bearing and axle are reckoned when somebody asks. */
  readonly model: CornerModel;
  readonly setting: Setting;
  /** Of the tyre's print across the wheel, in metres, and of the air in the tyre, in pascals. */
  readonly printWidth: number;
  readonly pressure: number;
  /** How the wheel is held, the spacer under it in metres, and the torque it is tightened with in newton metres. */
  readonly fixing: Fixing;
  readonly spacer: number;
  readonly torque: number;
  /** The rim's width with the change: metres. */
  readonly rimWidth: number;
}

/** The print of a tyre is about as wide as its tread: a share of the section width; common practice, no source. */
const PRINT_SHARE = 0.8;

/** The same in all training cars, in pascals above the air's. */
const PRESSURE = 230_000;

/** Corners as they have been asked for: drawing, table and prose of a page ask for the same ones. */
const known = new WeakMap<CornerModel, WeakMap<Setting, Standing>>();

/** The corner of a model at a setting. */
export function standing(model: CornerModel, setting: Setting): Standing {
  const ofModel = known.get(model) ?? new WeakMap<Setting, Standing>();
  known.set(model, ofModel);
  const found = ofModel.get(setting) ?? stood(model, setting);
  ofModel.set(setting, found);
  return found;
}

function stood(model: CornerModel, setting: Setting): Standing {
  const {
    corner,
    gear,
    bearing: { hub },
    anatomy,
    fixing,
  } = model;
  const change = {
    spacer: setting.spacer / 1000,
    inset: setting.inset / 1000,
    loadedRadius: setting.radius / 1000,
    camberAtUpperPivot: radians(setting.camberAtTop),
    camberAtCarrier: radians(setting.camberAtCarrier),
  };
  const onSubframe = subframeMoved(withPivots(corner, setting), setting.subframe / 1000);
  const ahead = changed(onSubframe, change);
  const rotation = rotationForSteer(ahead, radians(setting.steer));
  const now = turned(ahead, rotation);
  return {
    corner: { ...now, pivots: ahead.pivots ?? corner.pivots },
    ahead,
    geometry: measure(now),
    wheelShift: wheelShift(change),
    rotation,
    steer: steerBetween(ahead, now),
    lift: liftBetween(ahead, now),
    loads: loadsOn(now, setting),
    gear,
    hub: { ...hub, loadLineOffset: hub.loadLineOffset + wheelShift(change) },
    pitchDiameter: anatomy.pitchDiameter / 1000,
    model,
    setting,
    printWidth: PRINT_SHARE * (anatomy.tyreWidth / 1000),
    pressure: PRESSURE,
    fixing,
    spacer: change.spacer,
    torque: Math.max(0, fixing.torque + setting.tightening),
    rimWidth: (anatomy.rimWidth + setting.wheelWidth) / 1000,
  };
}

/** A quantity of the standing corner, in SI. */
export function valueOf(id: QuantityId, now: Standing): number {
  if (isFamilyQuantity(id)) return familyValue(id, now);
  if (isChangeQuantity(id)) return byChange(id, now);
  switch (id) {
    case 'steer':
      return now.steer;
    case 'lift':
      return now.lift;
    case 'rotation':
      return now.rotation;
    case 'frontLift':
      return frontLift(now.ahead, now.steer);
    case 'camberFromInclination':
      return camberFromInclination(now.geometry.inclination, turnOf(now));
    case 'camberFromCaster':
      return camberFromCaster(now.geometry.caster, turnOf(now));
    case 'camberByRule':
      return camberByRule(camberOf(now.ahead.spin), now.geometry, turnOf(now));
    case 'toe':
      return toeOf(now.corner);
    case 'loadedRadius':
      return now.corner.loadedRadius;
    case 'brakeMoment':
      return momentBy('brake', now);
    case 'driveMoment':
      return momentBy('drive', now);
    case 'blowMoment':
      return momentBy('blow', now);
    case 'dragMoment':
      return momentBy('drag', now);
    case 'brakeTorque':
      return torqueBy('brake', now);
    case 'shaftTorque':
      return torqueBy('drive', now);
    case 'sideMoment':
      return momentBy('side', now);
    case 'weightMoment':
      return momentBy('weight', now);
    case 'pneumaticTrail':
      return trailOfTyre(loadBy('side', now));
    case 'selfReturn':
      return selfReturn(now.ahead, loadBy('weight', now), now.steer);
    case 'parkingByGyration':
    case 'parkingByThirds':
    case 'parkingByPressure':
      return parkingEstimates(parkedAt(now))[id];
    case 'rodForce':
      return rodReaction(now)?.rodForce ?? 0;
    case 'rackForce':
      return rodReaction(now)?.rackForce ?? 0;
    case 'handwheelTorque':
      return torqueInHands(now, now.gear);
    case 'rimForce':
      return rimForce(torqueInHands(now, now.gear), now.gear);
    case 'rimForceUnassisted':
      return rimForce(torqueInHands(now, { ...now.gear, assist: 1 }), now.gear);
    default:
      return now.geometry[id];
  }
}

/** The steer as an alignment sheet counts it: positive out, whichever side the wheel is on. */
const turnOf = ({ corner, steer }: Standing): number => outboardSign(corner.side) * steer;

const momentBy = (id: LoadId, { corner, loads }: Standing): number =>
  loads
    .filter((load) => load.id === id)
    .reduce((sum, { action }) => sum + momentOf(corner, action), 0);

/** Force at the tyre times loaded radius: what the brake or the shaft gives the wheel. */
const torqueBy = (id: LoadId, { corner, loads }: Standing): number =>
  loads
    .filter((load) => load.id === id)
    .reduce((sum, { force }) => sum + force * corner.loadedRadius, 0);

/** How large a load is set, in newtons. */
const loadBy = (id: LoadId, { loads }: Standing): number =>
  loads.find((load) => load.id === id)?.force ?? 0;

/** The wheel at a standstill on dry concrete, its brake held, with the print and the pressure of its tyre. */
const parkedAt = (now: Standing): Parked => ({
  load: loadBy('weight', now),
  friction: DRY_CONCRETE,
  pressure: now.pressure,
  print: { width: now.printWidth, scrubRadius: now.geometry.scrubRadius },
});

/** What the tie rod and the rack hold of all loads together; nothing where the rod cannot hold anything. */
function rodReaction({ corner, loads }: Standing): RodReaction | undefined {
  const reaction = reactionTo(
    corner,
    loads.map(({ action }) => action),
  );
  return reaction.ok ? reaction.value.tieRod : undefined;
}

/** Torque at the steering wheel, positive to the left: it goes with the road wheel, wherever the rack lies. */
function torqueInHands(now: Standing, gear: SteeringGear): number {
  const { axis, tieRod } = now.corner;
  if (!tieRod) return 0;
  const torque = handwheelTorque(rodReaction(now)?.rackForce ?? 0, gear);
  return rackSense(axis, tieRod) * torque;
}

/** The corner turned, its tie rod following on the rack as far as it reaches. */
function turned(ahead: Corner, angle: number): Corner {
  const onRack = steeredOnRack(ahead, angle);
  return onRack.ok ? onRack.value.corner : steered(ahead, angle);
}

/** The corner with its pivots shifted; the wheel stays where it is. */
function withPivots(corner: CornerModel['corner'], setting: Setting): CornerModel['corner'] {
  const outward = corner.side === 'left' ? 1 : -1;
  const shift = (ahead: number, outboard: number) =>
    vector(ahead / 1000, (outward * outboard) / 1000, 0);
  const lower = plus(corner.pivots.lower, shift(setting.lowerForward, setting.lowerOutboard));
  const upper = plus(corner.pivots.upper, shift(-setting.upperRearward, -setting.upperInboard));
  return { ...corner, axis: lineThrough(lower, upper), pivots: { lower, upper } };
}
