import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rateHub, type DutyPhase } from '#core/bearing/hub-rating.ts';
import type { Hub } from '#core/bearing/hub.ts';
import { lifeDistance_km, lifeExponent } from '#core/bearing/life.ts';
import { anyDuty, anyHub, anyRadii, between } from './arbitraries.ts';

const scaled = (duty: readonly DutyPhase[], k: number): readonly DutyPhase[] =>
  duty.map(({ share, vertical, inward }) => ({
    share,
    vertical: k * vertical,
    inward: k * inward,
  }));

describe('rating of a hub', () => {
  test('every phase’s radial loads add up to the wheel load and its thrusts differ by the lateral force', () => {
    fc.assert(
      fc.property(anyHub, anyDuty, anyRadii, (hub, duty, radii) => {
        rateHub(hub, duty, radii).phases.forEach(({ radial, thrust }, i) => {
          const { vertical, inward } = duty[i] ?? { vertical: NaN, inward: NaN };
          expect(radial.outboard + radial.inboard).toBeCloseTo(vertical, 6);
          expect(thrust.outboard - thrust.inboard).toBeCloseTo(inward, 6);
        });
      }),
    );
  });

  test('rows, load line and lateral force mirrored give the mirrored answer', () => {
    fc.assert(
      fc.property(anyHub, anyDuty, anyRadii, (hub, duty, radii) => {
        const mirroredHub: Hub = {
          spread: hub.spread,
          loadLineOffset: -hub.loadLineOffset,
          outboard: hub.inboard,
          inboard: hub.outboard,
        };
        const mirroredDuty = duty.map((phase) => ({ ...phase, inward: -phase.inward }));
        const rating = rateHub(hub, duty, radii);
        const mirrored = rateHub(mirroredHub, mirroredDuty, radii);
        expect(mirrored.outboard).toEqual(rating.inboard);
        expect(mirrored.inboard).toEqual(rating.outboard);
        expect(mirrored.life / rating.life).toBeCloseTo(1, 12);
      }),
    );
  });

  test('k times all loads divides each row’s life by k to its exponent', () => {
    fc.assert(
      fc.property(anyHub, anyDuty, anyRadii, between(0.5, 3), (hub, duty, radii, k) => {
        const light = rateHub(hub, duty, radii);
        const heavy = rateHub(hub, scaled(duty, k), radii);
        for (const place of ['outboard', 'inboard'] as const) {
          // A thrust right at the limit e may fall on the other side of it by rounding: 0.5 % of load, 1.5 % of life.
          const ratio = light[place].life / heavy[place].life / k ** lifeExponent(hub[place].kind);
          expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
        }
      }),
    );
  });

  test('the hub lives no longer than its shorter-lived row, and at least half as long', () => {
    fc.assert(
      fc.property(anyHub, anyDuty, anyRadii, (hub, duty, radii) => {
        const { life, outboard, inboard } = rateHub(hub, duty, radii);
        const shorter = Math.min(outboard.life, inboard.life);
        expect(life).toBeLessThan(shorter * (1 + 1e-12));
        expect(life).toBeGreaterThan(shorter / 2);
      }),
    );
  });

  test('each row’s mean load lies between its least and its greatest equivalent load', () => {
    fc.assert(
      fc.property(anyHub, anyDuty, anyRadii, (hub, duty, radii) => {
        const rating = rateHub(hub, duty, radii);
        for (const place of ['outboard', 'inboard'] as const) {
          const loads = rating.phases.map(({ equivalent }) => equivalent[place]);
          expect(rating[place].meanLoad).toBeGreaterThanOrEqual(Math.min(...loads) * (1 - 1e-9));
          expect(rating[place].meanLoad).toBeLessThanOrEqual(Math.max(...loads) * (1 + 1e-9));
        }
      }),
    );
  });

  test('one phase told as two equal ones changes nothing', () => {
    fc.assert(
      fc.property(anyHub, anyDuty, anyRadii, (hub, duty, radii) => {
        const told = duty.flatMap((phase) => {
          const half = { ...phase, share: phase.share / 2 };
          return [half, half];
        });
        const ratio = rateHub(hub, told, radii).life / rateHub(hub, duty, radii).life;
        expect(ratio).toBeCloseTo(1, 12);
      }),
    );
  });

  test('the way is the life rolled on the rolling radius', () => {
    fc.assert(
      fc.property(anyHub, anyDuty, anyRadii, (hub, duty, radii) => {
        const { life, distance_km } = rateHub(hub, duty, radii);
        expect(distance_km).toBe(lifeDistance_km(life, radii.rollingRadius));
      }),
    );
  });

  test('is in scope exactly where both rows’ mean loads are at most half their ratings', () => {
    fc.assert(
      fc.property(anyHub, anyDuty, anyRadii, (hub, duty, radii) => {
        const { outboard, inboard, withinScope } = rateHub(hub, duty, radii);
        const low =
          2 * outboard.meanLoad <= hub.outboard.dynamicRating &&
          2 * inboard.meanLoad <= hub.inboard.dynamicRating;
        expect(withinScope).toBe(low);
      }),
    );
  });
});
