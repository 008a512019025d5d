import { meanLoad, shareFaults } from './duty.ts';
import { hubLoads, type Hub, type HubLoads } from './hub.ts';
import { lifeDistance_km, lifeExponent, ratingLife, withinScope } from './life.ts';
import type { Row } from './row.ts';
import type { Rows, WheelLoad } from './rows.ts';
import { systemLife } from './system-life.ts';

/** A kind of driving: the wheel's load and the part of all revolutions made under it. */
export interface DutyPhase extends WheelLoad {
  /** From 0 to 1; the shares of all phases add up to 1. */
  readonly share: number;
}

/** In metres, both more than 0. */
export interface WheelRadii {
  /** From the wheel centre to the contact centre. */
  readonly loadedRadius: number;
  /** Way rolled in one turn, divided by 2π. */
  readonly rollingRadius: number;
}

/** One phase of a duty cycle with what the rows carry in it. */
export interface RatedPhase extends HubLoads {
  readonly share: number;
}

/** What a duty cycle does to one row. */
export interface RowRating {
  /** Mean equivalent load, in newtons. */
  readonly meanLoad: number;
  /** Basic rating life L10, in million revolutions. */
  readonly life: number;
  /** Whether the mean load is small enough (C/2) for the life to mean anything. */
  readonly withinScope: boolean;
}

/** What a duty cycle does to the hub. */
export interface HubRating extends Rows<RowRating> {
  /** The rows' loads, phase by phase, in the order of the duty cycle. */
  readonly phases: readonly RatedPhase[];
  /** Basic rating life L10 of both rows together, in million revolutions. */
  readonly life: number;
  /** The same as a distance rolled, in kilometres. */
  readonly distance_km: number;
  /** Whether both rows are within scope. */
  readonly withinScope: boolean;
}

/**
 * Rates a hub for a duty cycle: the rows' loads in each phase, their mean loads and lives, and the life
 * of the hub.
 *
 * A row that no phase loads lives for ever (Infinity). The life counts fatigue of rows set without
 * clearance or preload; water, dirt, impacts and bad mounting are not in it, and no life makes a change
 * to a car safe.
 *
 * @param duty phases whose shares add up to 1 (see `shareFaults`)
 * @throws RangeError for shares that do not, for a spread or a radius that is not more than 0
 */
export function rateHub(
  hub: Hub,
  duty: readonly DutyPhase[],
  { loadedRadius, rollingRadius }: WheelRadii,
): HubRating {
  requirePositive('a spread', hub.spread);
  requirePositive('a loaded radius', loadedRadius);
  requirePositive('a rolling radius', rollingRadius);
  const [fault] = shareFaults(duty.map(({ share }) => share));
  if (fault !== undefined) throw new RangeError(`the duty ${fault.wrong}, not ${fault.allowed}`);

  const phases = duty.map((phase) => ({
    share: phase.share,
    ...hubLoads(hub, phase, loadedRadius),
  }));
  const rateRow = (place: keyof Rows<Row>): RowRating => {
    const { kind, dynamicRating } = hub[place];
    const steps = phases.map(({ share, equivalent }) => ({ share, load: equivalent[place] }));
    const mean = meanLoad(steps, lifeExponent(kind));
    return {
      meanLoad: mean,
      life: ratingLife(kind, dynamicRating, mean),
      withinScope: withinScope(dynamicRating, mean),
    };
  };
  const outboard = rateRow('outboard');
  const inboard = rateRow('inboard');
  const life = systemLife([
    { kind: hub.outboard.kind, life: outboard.life },
    { kind: hub.inboard.kind, life: inboard.life },
  ]);
  return {
    phases,
    outboard,
    inboard,
    life,
    distance_km: lifeDistance_km(life, rollingRadius),
    withinScope: outboard.withinScope && inboard.withinScope,
  };
}

function requirePositive(what: string, length: number): void {
  if (!(length > 0)) throw new RangeError(`${what} of ${length} m is not more than 0`);
}
