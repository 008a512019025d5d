import type { SteeringGear } from '#core/handwheel.ts';
import { si } from '../phrase.ts';
import { rackPlace, type Assist, type Forward } from './steering.ts';

/** What lies between the rack and the driver's hands, as an exercise gives it. */
export interface Gear {
  /** Across the rim of the steering wheel. */
  readonly rim_mm: number;
  readonly assist: Assist;
  /** Of the rack, in one turn. */
  readonly travel_mm: number;
  readonly forward: Forward;
}

/** The same in metres. */
export const gear = ({ travel_mm, rim_mm, assist }: Gear): SteeringGear => ({
  travelPerTurn: si(travel_mm, 'mm'),
  rimRadius: si(rim_mm, 'mm') / 2,
  assist,
});

/** Where the rack lies, read before `the axis`; and where it does not lie. */
export const place = ({ forward }: Pick<Gear, 'forward'>): string => rackPlace(forward);
export const otherPlace = ({ forward }: Pick<Gear, 'forward'>): string =>
  rackPlace(forward > 0 ? -1 : 1);
