import fc from 'fast-check';
import { expect, test } from 'vitest';
import { momentOf } from '#core/action.ts';
import { radians } from '#core/angle.ts';
import { spinAxis, type Corner } from '#core/corner.ts';
import { camberOf, measure } from '#core/geometry.ts';
import { actionOf } from '#core/load-cases.ts';
import { selfReturn, selfReturnByRule } from '#core/self-return.ts';
import { liftBetween, rotationForSteer, steerBetween, steered } from '#core/steering.ts';
import { vector } from '#core/vector.ts';
import { workshopAxis } from '#core/workshop-axis.ts';
import { anyCorner } from './corner-arbitraries.ts';

const LOAD = 4000;

const ofLoad = (corner: Corner): number =>
  momentOf(corner, actionOf(corner, { kind: 'vertical', force: LOAD }));

/** An upright left wheel on an axis without caster and without trail. */
function plainCorner(inclination: number, scrubRadius: number): Corner {
  const wheel = {
    side: 'left',
    wheelCentre: vector(0, 0.75, 0.3),
    spin: spinAxis('left', 0, 0),
    loadedRadius: 0.3,
  } as const;
  const axis = workshopAxis(wheel, { inclination, caster: 0, scrubRadius, trail: 0 });
  return { ...wheel, axis };
}

const PLAIN = fc.record({
  inclination: fc.double({ min: radians(6), max: radians(16), noNaN: true }),
  scrub: fc.double({ min: -0.03, max: 0.06, noNaN: true }),
  turn: fc.double({ min: radians(3), max: radians(35), noNaN: true }),
});

test('lift and return are one thing: the moment is the load times the slope of the lift, downhill', () => {
  fc.assert(
    fc.property(anyCorner, fc.double({ min: -0.6, max: 0.6, noNaN: true }), (corner, angle) => {
      const step = 1e-4;
      const lift = (turn: number): number => liftBetween(corner, steered(corner, turn));
      const slope = (lift(angle + step) - lift(angle - step)) / (2 * step);
      expect(Math.abs(ofLoad(steered(corner, angle)) + LOAD * slope)).toBeLessThan(1e-2);
    }),
  );
});

test('straight ahead both loads cancel, and to left and right they turn back alike', () => {
  fc.assert(
    fc.property(anyCorner, fc.double({ min: 0.05, max: 0.5, noNaN: true }), (corner, steer) => {
      expect(Math.abs(selfReturn(corner, LOAD, 0))).toBeLessThan(1e-9);
      expect(selfReturn(corner, LOAD, steer)).toBeCloseTo(-selfReturn(corner, LOAD, -steer), 9);
    }),
  );
});

test('without caster a load turns back with W sin σ cos σ sin θ (q − R tan γ), exactly', () => {
  fc.assert(
    fc.property(PLAIN, ({ inclination, scrub, turn }) => {
      const corner = plainCorner(inclination, scrub);
      const now = steered(corner, turn);
      const offset =
        measure(corner).spindleOffset - corner.loadedRadius * Math.tan(camberOf(now.spin));
      const byHand =
        -LOAD * Math.sin(inclination) * Math.cos(inclination) * Math.sin(turn) * offset;
      expect(ofLoad(now)).toBeCloseTo(byHand, 8);
    }),
  );
});

test('the rule comes within two hundredths of it', () => {
  fc.assert(
    fc.property(PLAIN, ({ inclination, scrub, turn }) => {
      const corner = plainCorner(inclination, scrub);
      const { spindleOffset, scrubRadius } = measure(corner);
      const offsets = { spindle: spindleOffset, scrub: scrubRadius };
      const exact = selfReturn(corner, LOAD, turn) / 2;
      const ratio = selfReturnByRule(LOAD, offsets, inclination, turn) / exact;
      expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
    }),
  );
});

test('with the offset at the ground alone, a car without scrub radius would not come back; it does', () => {
  const inclination = radians(12);
  const corner = plainCorner(inclination, 0);
  const steer = steerBetween(corner, steered(corner, rotationForSteer(corner, radians(20))));
  expect(steer).toBeCloseTo(radians(20), 9);
  expect(selfReturn(corner, LOAD, steer)).toBeLessThan(-30);
});
