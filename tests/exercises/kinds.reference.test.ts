import { expect, test } from 'vitest';
import { fromSI } from '#core/units/convert.ts';
import type { Kind } from '#exercises/kind.ts';
import { clampFromTorque } from '#exercises/kinds/clamp-from-torque.ts';
import { parkingAtTheRim } from '#exercises/kinds/parking-at-the-rim.ts';

/** The first answers of a kind for numbers from elsewhere, each in the unit asked for. */
function answers<Item>({ parts }: Kind<Item>, item: Item, count: number): readonly number[] {
  const values: number[] = [];
  for (const part of parts.slice(0, count)) values.push(part.value(item, values));
  return values.map((value, i) => fromSI(value, parts[i]?.unit ?? 'mm'));
}

const PARKING = {
  source:
    'Barton and Fieldhouse, Automotive Chassis Engineering (2018), example E2.1, part 1, p. 82',
};

// A van with 2400 kg on its front axle, prints 250 mm wide, an offset of 25 mm and a friction of 0.58: lever 87 mm,
// 594 N·m for each wheel. Printed to the millimetre and the newton metre.
test(`parking comes to what a published van comes to (${PARKING.source})`, () => {
  const item = {
    load_N: 1200 * 9.81,
    friction: 0.58,
    width_mm: 250,
    scrub_mm: 25,
    arm_mm: 120,
    travel_mm: 48,
    rim_mm: 380,
  } as unknown as Parameters<typeof parkingAtTheRim.question>[0];
  const [lever = NaN, moment = NaN] = answers(parkingAtTheRim, item, 2);
  expect(Math.abs(lever - 87)).toBeLessThan(0.5);
  expect(Math.abs(moment - 594)).toBeLessThan(0.5);
});

const CLAMP = {
  source:
    'T = K d F with K = 0.2, dry: NASA RP-1228, Fastener Design Manual, and Shigley, chapter 8 (from memory)',
};

// 110 N·m on M12 give 45.8 kN, 140 N·m on M14 give 50.0 kN. Half of the last digit.
test.each([
  [110, 12, 45.8],
  [140, 14, 50.0],
])(`%i N·m on M%i clamp with %f kN (${CLAMP.source})`, (torque_Nm, thread_mm, clamp) => {
  const item = { torque_Nm, thread_mm, nutFactor: 0.2, scatter: 1.5, count: 5 };
  const [middle = NaN] = answers(clampFromTorque, item, 1);
  expect(Math.abs(middle - clamp)).toBeLessThanOrEqual(0.05);
});
