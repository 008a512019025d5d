import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pneumaticTrail } from '#core/pneumatic-trail.ts';

/**
 * The brush model once more, from its bristles and not from the closed formula: a parabolic pressure, bristles that
 * lean with the slip until friction lets them go, summed over the print.
 */
function bristles(slip: number): { readonly force: number; readonly trail: number } {
  const count = 20_000;
  let force = 0;
  let moment = 0;
  for (let i = 0; i < count; i++) {
    // From the front edge, 0, to the rear one, 2, in half lengths of the print.
    const back = (2 * (i + 0.5)) / count;
    const most = 0.75 * back * (2 - back);
    const sheared = 1.5 * slip * back;
    const here = Math.min(most, sheared);
    force += (here * 2) / count;
    moment += (here * (back - 1) * 2) / count;
  }
  return { force, trail: moment / force };
}

test('bristles summed over the print give the same trail', () => {
  for (const slip of [0.05, 0.2, 0.4, 0.6, 0.8, 0.95]) {
    const { force, trail } = bristles(slip);
    // The sum has 20 000 terms of a smooth curve with one corner.
    expect(pneumaticTrail(force, 1, 1)).toBeCloseTo(trail, 4);
  }
});

test('it begins with a third of half the print and is gone at the limit', () => {
  expect(pneumaticTrail(0, 5000, 0.075)).toBeCloseTo(0.025, 15);
  expect(pneumaticTrail(5000, 5000, 0.075)).toBe(0);
  expect(pneumaticTrail(9000, 5000, 0.075)).toBe(0);
});

test('it only ever shrinks as the force grows, either way', () => {
  const force = fc.double({ min: 0, max: 5000, noNaN: true });
  fc.assert(
    fc.property(force, force, (a, b) => {
      const [less, more] = a < b ? [a, b] : [b, a];
      expect(pneumaticTrail(more, 5000, 0.075)).toBeLessThanOrEqual(
        pneumaticTrail(less, 5000, 0.075),
      );
      expect(pneumaticTrail(-more, 5000, 0.075)).toBe(pneumaticTrail(more, 5000, 0.075));
    }),
  );
});
