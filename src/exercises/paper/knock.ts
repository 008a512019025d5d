import { changed, NO_CHANGE } from '#core/change.ts';
import type { Side } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { fromSI } from '#core/units/convert.ts';
import { si } from '../phrase.ts';
import { cornerWithPivots } from './corner.ts';
import { onSheet_deg } from './sheet.ts';

/** What a knock may have bent or moved. */
export type What = 'carrier' | 'top' | 'subframe';
export type Cause = `${What}-${Side}`;

export const CAUSES: readonly Cause[] = [
  'carrier-left',
  'carrier-right',
  'top-left',
  'top-right',
  'subframe-left',
  'subframe-right',
];

/** An alignment sheet of both front wheels, alike before a knock, and what the knock has done. */
export interface Knocked {
  readonly cause: Cause;
  readonly inclinationWas_deg: number;
  readonly camberWas_deg: number;
  readonly casterWas_deg: number;
  readonly leftInclination_deg: number;
  readonly leftCamber_deg: number;
  readonly leftCaster_deg: number;
  readonly rightInclination_deg: number;
  readonly rightCamber_deg: number;
  readonly rightCaster_deg: number;
}

/** What the sheet has of one wheel. */
export interface Reading {
  readonly inclination_deg: number;
  readonly camber_deg: number;
}

/** What is read on a side after the knock. */
export const nowOn = (item: Knocked, side: Side): Reading =>
  side === 'left'
    ? { inclination_deg: item.leftInclination_deg, camber_deg: item.leftCamber_deg }
    : { inclination_deg: item.rightInclination_deg, camber_deg: item.rightCamber_deg };

export const sideOf = (cause: string): Side => (cause.endsWith('left') ? 'left' : 'right');
export const whatOf = (cause: string): What => cause.slice(0, cause.indexOf('-')) as What;

/** What a corner reads after a change of camber, at the carrier or with the axis along. */
function after(was: Reading, by: 'camberAtCarrier' | 'camberAtUpperPivot', camber_deg: number) {
  const corner = cornerWithPivots(si(was.inclination_deg, 'deg'), si(was.camber_deg, 'deg'));
  const now = measure(changed(corner, { ...NO_CHANGE, [by]: si(camber_deg, 'deg') }));
  return {
    inclination_deg: onSheet_deg(fromSI(now.inclination, 'deg')),
    camber_deg: onSheet_deg(fromSI(now.camber, 'deg')),
  };
}

/** Both sides of the sheet, with something bent or moved by so much camber. */
export function readings(
  was: Reading,
  cause: Cause,
  by_deg: number,
): Readonly<Record<Side, Reading>> {
  const side = sideOf(cause);
  switch (whatOf(cause)) {
    case 'carrier':
      return { left: was, right: was, [side]: after(was, 'camberAtCarrier', by_deg) };
    case 'top':
      return { left: was, right: was, [side]: after(was, 'camberAtUpperPivot', by_deg) };
    case 'subframe': {
      // The lower pivots go to that side: there the foot of the axis goes outboard, and the wheel’s top inboard.
      const size = Math.abs(by_deg);
      const out = after(was, 'camberAtUpperPivot', -size);
      const inward = after(was, 'camberAtUpperPivot', size);
      return side === 'left' ? { left: out, right: inward } : { left: inward, right: out };
    }
  }
}

/** Inclination and camber of one carrier together, in radians. */
export const includedOf = ({ inclination_deg, camber_deg }: Reading): number =>
  measure(cornerWithPivots(si(inclination_deg, 'deg'), si(camber_deg, 'deg'))).includedAngle;
