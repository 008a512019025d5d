import { expect, test } from 'vitest';
import { equivalentLoad } from '#core/bearing/equivalent.ts';

const NSK = 'NSK Rolling Bearings, Cat. E1102, chapter 5';

// Tolerance: printed in whole newtons, the 6208 rounded to tens.
test.each([
  {
    name: 'first bearing of a tapered pair',
    radial: 1569,
    thrust: 3474,
    factors: { e: 0.6 / 0.73, X: 0.4, Y: 0.73 },
    load: 3164,
    tolerance: 0.6,
    source: `${NSK}, example 5 (from memory)`,
  },
  {
    name: 'second bearing of a tapered pair',
    radial: 3931,
    thrust: 1474,
    factors: { e: 0.6 / 1.6, X: 0.4, Y: 1.6 },
    load: 3931,
    tolerance: 0.6,
    source: `${NSK}, example 5 (from memory)`,
  },
  {
    name: 'deep groove ball bearing 6208',
    radial: 2500,
    thrust: 1000,
    factors: { e: 0.26, X: 0.56, Y: 1.67 },
    load: 3070,
    tolerance: 5,
    source: `${NSK}, example 3 (from memory)`,
  },
])('$name: $load N ($source)', ({ radial, thrust, factors, load, tolerance }) => {
  expect(Math.abs(equivalentLoad(radial, thrust, factors) - load)).toBeLessThanOrEqual(tolerance);
});
