import type { Corner } from '../corner.ts';
import { measure } from '../geometry.ts';
import type { SteeredOnRack } from '../rack-travel.ts';
import { liftBetween, steerBetween } from '../steering.ts';
import type { SteeredResult } from './corner-result.ts';
import { inDegrees, inMillimetres, tripleInMillimetres } from './edge-units.ts';

/** The steered corner as a document's result has it, beside the same corner straight ahead. */
export function steeredResult(ahead: Corner, { corner, rackTravel }: SteeredOnRack): SteeredResult {
  const geometry = measure(corner);
  return {
    steer_deg: inDegrees(steerBetween(ahead, corner)),
    camber_deg: inDegrees(geometry.camber),
    scrubRadius_mm: inMillimetres(geometry.scrubRadius),
    trail_mm: inMillimetres(geometry.trail),
    spindleOffset_mm: inMillimetres(geometry.spindleOffset),
    lift_mm: inMillimetres(liftBetween(ahead, corner)),
    contactCentre_mm: tripleInMillimetres(geometry.contactCentre),
    ...(rackTravel !== undefined && { rackTravel_mm: inMillimetres(rackTravel) }),
  };
}
