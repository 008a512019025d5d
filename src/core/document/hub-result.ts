import { rateHub, type HubRating, type RatedPhase } from '../bearing/hub-rating.ts';
import { failure, success, type Outcome } from '../fault.ts';
import type { DutyResult, HubResult } from './corner-result.ts';
import { unsigned0 } from './edge-units.ts';
import type { CornerSetup } from './set-up.ts';

/** The hub's loads and lives; nothing where the document has no hub. */
export function hubResult({ hub, radii }: CornerSetup): Outcome<HubResult | undefined> {
  if (hub === undefined) return success(undefined);
  const rating = rateHub(hub.hub, hub.duty, radii);
  const { outboard, inboard, distance_km } = rating;
  if ([outboard.life, inboard.life, distance_km].includes(Infinity))
    return failure({
      path: 'hub.duty',
      wrong: 'leaves a row without load, so that its life has no end',
      allowed: 'loads that reach both rows',
    });
  return success(resultOf(rating));
}

const resultOf = (rating: HubRating): HubResult => ({
  duty: rating.phases.map(dutyResult),
  outboardL10_Mrev: rating.outboard.life,
  inboardL10_Mrev: rating.inboard.life,
  L10_Mrev: rating.life,
  L10_km: rating.distance_km,
  withinScope: rating.withinScope,
});

const dutyResult = ({ radial, thrust, equivalent }: RatedPhase): DutyResult => ({
  outboardRadial_N: unsigned0(radial.outboard),
  inboardRadial_N: unsigned0(radial.inboard),
  outboardThrust_N: unsigned0(thrust.outboard),
  inboardThrust_N: unsigned0(thrust.inboard),
  outboardEquivalent_N: unsigned0(equivalent.outboard),
  inboardEquivalent_N: unsigned0(equivalent.inboard),
});
