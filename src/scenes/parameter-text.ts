import { numberText, shownAsZero, unitText, type UnitSystem } from '#core/display.ts';
import type { QuantityKind } from '#core/quantities.ts';
import { fromSI, toSI } from '#core/units/convert.ts';
import { PARAMETERS, type ParameterId } from './parameters.ts';

/** The unit in which parameters are stored. */
const storedIn = {
  length: 'mm',
  angle: 'deg',
  force: 'N',
  moment: 'Nm',
  life: 'Mrev',
  distance: 'km',
  speed: 'km/h',
  share: 'percent',
} as const;

/** A stored value of some kind in SI, and back. */
export const storedSI = (kind: QuantityKind, value: number): number => toSI(value, storedIn[kind]);

export const storedFromSI = (kind: QuantityKind, value: number): number =>
  fromSI(value, storedIn[kind]);

/** A parameter's stored value in SI. */
export const parameterSI = (id: ParameterId, value: number): number =>
  storedSI(PARAMETERS[id].kind, value);

/** The value with its direction in words: `20.0 mm outboard`, `no spacer`. */
export function parameterText(
  id: ParameterId,
  value: number,
  units: UnitSystem = 'metric',
): string {
  const { kind, positive, negative, none } = PARAMETERS[id];
  const si = parameterSI(id, value);
  if (shownAsZero(si, kind, units)) return none;
  const size = numberText(Math.abs(si), kind, units) + unitText(kind, units);
  return `${size} ${value > 0 ? positive : negative}`;
}
