import { radians } from '#core/angle.ts';
import type { Action } from '#core/action.ts';
import { downInWheelPlane, type Corner } from '#core/corner.ts';
import { actionOf, type LoadCase, type Shaft } from '#core/load-cases.ts';
import { movedTo } from '#core/moved-action.ts';
import { pneumaticTrail } from '#core/pneumatic-trail.ts';
import { along, times, vector, type Vector } from '#core/vector.ts';
import { LOAD_IDS, PARAMETERS, type LoadId } from '../parameters.ts';
import type { Setting } from '../setting.ts';

/**
 * The figure's tyre: half the length of its print in metres, usual for passenger cars (from memory), and the most
 * that it holds to the side: as far as the figure goes.
 */
const HALF_PRINT = 0.075;
const SIDE_LIMIT = PARAMETERS.side.most;

/** A load that a reader has set, and what it does to the carrier. */
export interface SetLoad {
  readonly id: LoadId;
  readonly force: number;
  readonly action: Action;
}

/** How far behind the contact centre the tyre's side force acts: shorter and shorter toward the limit. */
export const trailOfTyre = (force: number): number => pneumaticTrail(force, SIDE_LIMIT, HALF_PRINT);

/** The loads of a setting on a corner as it stands. */
export const loadsOn = (corner: Corner, setting: Setting): readonly SetLoad[] =>
  LOAD_IDS.filter((id) => setting[id] !== 0).map((id) => ({
    id,
    force: setting[id],
    action: feltAction(corner, loadCase(id, setting, corner)),
  }));

/** What a load of that size is called in the core. */
function loadCase(id: LoadId, setting: Setting, corner: Corner): LoadCase {
  const force = setting[id];
  switch (id) {
    case 'brake':
      return { kind: 'brake-on-carrier', force };
    case 'drive':
      return shaftLoad(setting, corner);
    case 'blow':
    case 'drag':
      return { kind: 'impact', force: vector(-force, 0, 0) };
    case 'side':
      return { kind: 'lateral', force, pneumaticTrail: trailOfTyre(force) };
    case 'weight':
      return { kind: 'vertical', force };
  }
}

/** The load through the shaft, in line with the wheel or not. */
export const shaftLoad = (setting: Setting, corner: Corner): Shaft => ({
  kind: 'shaft',
  force: setting.drive,
  shaftDirection: shaftDirection(corner, setting.shaftRise),
});

/** What the carrier feels of a load. That of a shaft is counted at the wheel centre: there only what the joint adds is a couple. */
export function feltAction(corner: Corner, load: LoadCase): Action {
  const action = actionOf(corner, load);
  return load.kind === 'shaft' ? movedTo(action, corner.wheelCentre) : action;
}

/**
 * A shaft out of line leans in the wheel's upright plane across the car; in line it needs no direction.
 *
 * @param rise_deg by how much its outer end stands higher, in degrees
 */
export function shaftDirection(corner: Corner, rise_deg: number): Vector | undefined {
  if (rise_deg === 0) return undefined;
  const angle = radians(rise_deg);
  const up = times(-Math.sin(angle), downInWheelPlane(corner.spin));
  return along(up, Math.cos(angle), corner.spin);
}
