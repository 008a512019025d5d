import { failure, success, type Outcome } from '../fault.ts';
import { measure } from '../geometry.ts';
import { steeredOnRack, type SteeredOnRack } from '../rack-travel.ts';
import type { CornerDocument } from './corner-document.ts';
import type { CornerResult } from './corner-result.ts';
import { geometryResult } from './geometry-result.ts';
import { hubResult } from './hub-result.ts';
import { momentResults } from './moment-results.ts';
import { setUp, type CornerSetup } from './set-up.ts';
import { steeredResult } from './steered-result.ts';

/** A spin axis that stands steeper than this (camber of 85°) has laid the wheel down. */
const FLAT = Math.sin((85 * Math.PI) / 180);

/**
 * Solves a corner document: geometry straight ahead and steered, the moment of each force about the steering
 * axis with its way to the driver's hands, and the hub's lives.
 *
 * @param document as `readCornerDocument` gives it
 * @returns a result without a non-finite number or a −0; or faults: those of `setUp`, a rotation that
 * the wheel or the tie rod cannot follow, a bearing row without any load
 */
export function solve(document: CornerDocument): Outcome<CornerResult> {
  const setup = setUp(document);
  return setup.ok ? solveSetup(setup.value) : setup;
}

function solveSetup(setup: CornerSetup): Outcome<CornerResult> {
  const now = standing(setup);
  if (!now.ok) return now;
  const moments = momentResults(now.value.corner, setup);
  if (!moments.ok) return moments;
  const hub = hubResult(setup);
  if (!hub.ok) return hub;
  return success({
    geometry: geometryResult(measure(setup.corner)),
    steered: steeredResult(setup.corner, now.value),
    ...(moments.value && { moments: moments.value }),
    ...(hub.value && { hub: hub.value }),
  });
}

function standing({ corner, rotation }: CornerSetup): Outcome<SteeredOnRack> {
  const now = steeredOnRack(corner, rotation);
  if (!now.ok) return failure(...now.faults.map((fault) => ({ ...fault, path: 'rotation_deg' })));
  if (Math.abs(now.value.corner.spin.z) < FLAT) return now;
  return failure({
    path: 'rotation_deg',
    wrong: 'lays the wheel flat on the ground',
    allowed: 'a rotation that leaves the wheel standing',
  });
}
