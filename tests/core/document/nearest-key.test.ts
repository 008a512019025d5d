import { describe, expect, test } from 'vitest';
import { nearestKey } from '#core/document/nearest-key.ts';

const keys = ['centre_mm', 'camber_deg', 'toe_deg', 'loadedRadius_mm', 'rollingRadius_mm'] as const;

describe('the nearest key', () => {
  test.each([
    ['center_mm', 'centre_mm'],
    ['Camber_deg', 'camber_deg'],
    ['camber', 'camber_deg'],
    ['camber_rad', 'camber_deg'],
    ['loadedradius_mm', 'loadedRadius_mm'],
    ['loadedRadius_m', 'loadedRadius_mm'],
    ['toe', 'toe_deg'],
    ['rolingRadius_mm', 'rollingRadius_mm'],
  ])('to %s is %s', (typed, meant) => {
    expect(nearestKey(typed, keys)).toBe(meant);
  });

  test.each(['colour', 'x', '', 'a'.repeat(1_000_000)])('to %.12s is none', (typed) => {
    expect(nearestKey(typed, keys)).toBeUndefined();
  });
});
