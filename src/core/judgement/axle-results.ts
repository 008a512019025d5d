import { axleReaction, yawMoment, type Axle, type AxleReaction, type Sides } from '../axle.ts';
import type { SteeringGear } from '../handwheel.ts';
import type { LoadCase } from '../load-cases.ts';
import { rackSense } from '../tie-rod.ts';
import { vector } from '../vector.ts';
import type { Values } from './fitted-car.ts';
import type { JudgedId } from './judged-quantities.ts';
import { STANDARD_LOADS } from './standard-loads.ts';
import type { JudgedWheel, WheelId } from './wheel-results.ts';

/** Results of both front wheels together. */
export type AxleId = Exclude<JudgedId, WheelId>;

export type AxleResults = Readonly<Record<AxleId, number>>;

/** What both front wheels together do to hands and car; NaN where a tie rod has no lever to hold them by. */
export function axleResults(value: Values, wheels: Sides<JudgedWheel>): AxleResults {
  const { left, right } = wheels;
  const gear: SteeringGear = {
    travelPerTurn: value('travelPerTurn_mm'),
    rimRadius: value('rimDiameter_mm') / 2,
    assist: value('assist'),
  };
  const load = value('wheelLoad_N');
  const axle: Axle = { left: left.corner, right: right.corner, gear };
  const { brake, brakeOnIce, blow } = STANDARD_LOADS;
  const braked = brakedBy(brake.share * load);
  const under = (onLeft: LoadCase, onRight?: LoadCase): AxleReaction | undefined => {
    const reaction = axleReaction(axle, { left: [onLeft], right: onRight ? [onRight] : [] });
    return reaction.ok ? reaction.value : undefined;
  };
  // The steering wheel turns with the road wheels, the rack behind the axis against them.
  const sense = rackSense(left.corner.axis, left.corner.tieRod);
  const rim = (reaction: AxleReaction | undefined): number =>
    reaction === undefined ? NaN : sense * reaction.rimForce;
  const both = under(braked, braked);
  const split = under(braked, brakedBy(brakeOnIce.share * load));
  const blown = under({ kind: 'impact', force: vector(-blow.share * load, 0, 0) });
  const track = left.geometry.contactCentre.y - right.geometry.contactCentre.y;
  return {
    track,
    brakingRimForce: rim(both),
    splitRimForce: rim(split),
    splitRimForceUnassisted: rim(split) * gear.assist,
    splitSteering: split === undefined ? NaN : split.left.moment + split.right.moment,
    splitYaw: yawMoment({ left: brake.share * load, right: brakeOnIce.share * load }, track),
    blowRimForce: rim(blown),
    blowRimForceUnassisted: rim(blown) * gear.assist,
  };
}

const brakedBy = (force: number): LoadCase => ({ kind: 'brake-on-carrier', force });
