import { describe, expect, test } from 'vitest';
import { momentOf } from '#core/action.ts';
import { contactCentre, heading } from '#core/corner.ts';
import { freeBodies, onCarrier } from '#core/free-bodies.ts';
import { NOTHING, times } from '#core/vector.ts';
import { wheelInCarrier } from '../references/mujoco-wheel.ts';
import { EXAMPLE } from './example-corner.ts';
import { expectClose } from './near.ts';

/**
 * The same two bodies in a rigid-body engine that is told nothing of levers: only where the two hinges are, which
 * force acts on the tyre, and who holds the wheel. The steering hinge then feels what it feels.
 */
describe('the moment that reaches the steering axis through two hinges', () => {
  const source = 'MuJoCo 3.3.8: mj_applyFT on the inner body, and a motor between the bodies';
  // Sums of a few products in double precision on both sides.
  const TOLERANCE = 1e-11;
  const contact = contactCentre(EXAMPLE);

  test('with a brake between wheel and carrier', async () => {
    const engine = await wheelInCarrier(EXAMPLE);
    const road = engine.onWheel(times(-3000, heading(EXAMPLE)), contact, NOTHING);
    const brake = engine.byMotorBetween(-road.spinning);
    expect(road.spinning + brake.spinning, source).toBeCloseTo(0, 9);
    const bodies = freeBodies(EXAMPLE, { kind: 'brake-on-carrier', force: 3000 });
    expectClose(momentOf(EXAMPLE, onCarrier(bodies)), road.steering + brake.steering, TOLERANCE);
  });

  test('with a brake inboard, that holds the wheel through a shaft', async () => {
    const engine = await wheelInCarrier(EXAMPLE);
    const force = times(-3000, heading(EXAMPLE));
    const road = engine.onWheel(force, contact, NOTHING);
    const both = engine.onWheel(force, contact, times(-road.spinning, EXAMPLE.spin));
    expect(both.spinning, source).toBeCloseTo(0, 9);
    const bodies = freeBodies(EXAMPLE, { kind: 'shaft', force: -3000 });
    expectClose(momentOf(EXAMPLE, onCarrier(bodies)), both.steering, TOLERANCE);
  });
});
