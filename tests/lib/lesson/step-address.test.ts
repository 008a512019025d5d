import { expect, test } from 'vitest';
import { stepInAddress } from '../../../src/lib/lesson/step-address.ts';

test('an address leads to the step that it names, and to the last one for the exercises', () => {
  expect(stepInAddress('#step-3', 5)).toBe(3);
  expect(stepInAddress('#step-5', 5)).toBe(5);
  expect(stepInAddress('#practice', 5)).toBe(5);
});

test('an address that names no step of the lesson leads to none', () => {
  for (const hash of ['', '#', '#step-0', '#step-6', '#step-', '#step-2b', '#sources'])
    expect(stepInAddress(hash, 5), hash).toBeUndefined();
});
