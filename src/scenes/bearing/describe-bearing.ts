import { flippedRow, type Rows } from '#core/bearing/rows.ts';
import { sizeText, valueText } from '#core/display.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';
import type { Side } from '#core/corner.ts';
import { bearingLoads, wheelLoad } from '../corner/bearing-values.ts';
import { valueOf, type Standing } from '../corner/standing.ts';
import type { BearingLook } from './bearing-look.ts';
import { UNLOADED } from './contact-lines.ts';
import { stationAt } from './force-way.ts';

/** What the drawing shows, in words and from the same numbers. */
export function bearingDescription(
  side: Side,
  now: Standing,
  { view, units, way }: BearingLook,
): string {
  const said = (id: QuantityId): string => sizeText(valueOf(id, now), quantity(id), units);
  const { vertical, inward } = wheelLoad(now);
  const { radial } = bearingLoads(now);
  const loaded = vertical > UNLOADED || Math.abs(inward) > UNLOADED;
  return [
    view === 'section'
      ? `The ${side} front wheel bearing cut open, seen from ahead of the car.`
      : `The ${side} front wheel on the road with its bearing cut open, seen from ahead of the car.`,
    `Two rows back to back, pressure centres ${said('pressureCentreSpread')} apart.`,
    `The load line lies ${said('loadLineOffset')} of the rows’ mid-plane.`.replace(
      ' of the',
      Math.abs(valueOf('loadLineOffset', now)) < 5e-5 ? ' from the' : ' of the',
    ),
    ...(loaded ? [] : ['No load.']),
    ...(vertical > UNLOADED ? [`Wheel load ${valueText(vertical, 'force', units)}.`] : []),
    ...(Math.abs(inward) > UNLOADED
      ? [
          `Side force at the road ${valueText(Math.abs(inward), 'force', units)}, ${inward > 0 ? 'toward the car' : 'away from the car'}.`,
        ]
      : []),
    ...(loaded
      ? [
          `Outboard row ${said('outboardRadial')}, inboard row ${said('inboardRadial')}.`,
          ...turned(radial),
        ]
      : []),
    ...(way === undefined ? [] : [`The force has come to: ${stationAt(way).name}.`]),
  ].join(' ');
}

function turned(radial: Rows<number>): string[] {
  const row = flippedRow(radial);
  return row === undefined ? [] : [`The ${row} row is loaded from the other side.`];
}
