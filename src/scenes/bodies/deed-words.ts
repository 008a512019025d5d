import { heading, outboardSign, type Corner } from '#core/corner.ts';
import { valueText, type UnitSystem } from '#core/display.ts';
import { dot } from '#core/vector.ts';
import type { Deed } from './deeds.ts';

type Sized = Pick<Deed, 'kind' | 'action'>;

/** Who does it to whom: `pads on disc`. */
export const deedName = ({ by, on }: Pick<Deed, 'by' | 'on'>): string => `${by} on ${on}`;

/** A force along the wheel's heading in newtons, forward positive; a torque about the spin axis in N·m, positive the way the wheel rolls. */
export const sizeOf = (corner: Corner, { kind, action }: Sized): number =>
  kind === 'force'
    ? dot(action.force, heading(corner))
    : outboardSign(corner.side) * dot(action.couple, corner.spin);

/** The size alone: `2500 N`, `787.5 N·m`. */
export const sizeText = (corner: Corner, deed: Sized, units: UnitSystem): string =>
  valueText(Math.abs(sizeOf(corner, deed)), deed.kind === 'force' ? 'force' : 'moment', units);

/** Which way it goes, and for a force where: `rearward at the road`, `against the rolling`. */
export function wayText(corner: Corner, deed: Sized & Pick<Deed, 'where'>): string {
  const size = sizeOf(corner, deed);
  if (deed.kind === 'torque') return size < 0 ? 'against the rolling' : 'with the rolling';
  return `${size < 0 ? 'rearward' : 'forward'} ${deed.where}`;
}
