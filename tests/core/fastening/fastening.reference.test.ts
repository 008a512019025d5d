import { describe, expect, test } from 'vitest';
import { clampLoad } from '#core/fastening/clamp-load.ts';
import { nutFactor } from '#core/fastening/nut-factor.ts';
import { stressArea } from '#core/fastening/thread.ts';
import { USUAL } from '#core/fastening/usual.ts';

const thread = (diameter_mm: number, pitch_mm: number) => ({
  diameter: diameter_mm / 1000,
  pitch: pitch_mm / 1000,
});

/** Nominal stress areas in mm². Tolerance: the standard prints three digits, half of the last one. */
describe('the stress area is the one of the standard’s tables', () => {
  test.each([
    { d: 10, P: 1.5, area: 58.0, within: 0.05, source: 'ISO 898-1, table 4 (coarse)' },
    { d: 12, P: 1.75, area: 84.3, within: 0.05, source: 'ISO 898-1, table 4 (coarse)' },
    { d: 14, P: 2, area: 115, within: 0.5, source: 'ISO 898-1, table 4 (coarse)' },
    { d: 12, P: 1.5, area: 88.1, within: 0.05, source: 'ISO 898-1, table 6 (fine; from memory)' },
    { d: 12, P: 1.25, area: 92.1, within: 0.05, source: 'ISO 898-1, table 6 (fine; from memory)' },
    { d: 14, P: 1.5, area: 125, within: 0.5, source: 'ISO 898-1, table 6 (fine; from memory)' },
  ])('M$d × $P', ({ d, P, area, within }) => {
    expect(Math.abs(1e6 * stressArea(thread(d, P)) - area)).toBeLessThanOrEqual(within);
  });
});

/** Proof loads in newtons from stress area and proof stress. Tolerance: a thousandth, the area is printed with three digits. */
describe('area times proof stress is the proof load of the tables', () => {
  test.each([
    { d: 12, P: 1.75, proof: 830, load: 70_000, source: 'ISO 898-1, class 10.9' },
    { d: 12, P: 1.75, proof: 580, load: 48_900, source: 'ISO 898-1, class 8.8' },
    { d: 14, P: 2, proof: 830, load: 95_500, source: 'ISO 898-1, class 10.9' },
  ])('M$d × $P at $proof MPa', ({ d, P, proof, load }) => {
    const found = 1e6 * stressArea(thread(d, P)) * proof;
    expect(Math.abs(found / load - 1)).toBeLessThanOrEqual(0.005);
  });
});

describe('torque and clamp load', () => {
  /** Tolerance: half of the last printed digit. */
  test.each([
    { torque: 110, d: 12, K: 0.2, kN: 45.8, source: 'T = K d F by hand' },
    { torque: 140, d: 14, K: 0.2, kN: 50.0, source: 'T = K d F by hand' },
  ])('$torque N·m on M$d', ({ torque, d, K, kN }) => {
    const clamp = clampLoad(torque, K, { diameter: d / 1000 });
    expect(Math.abs(clamp / 1000 - kN)).toBeLessThanOrEqual(0.05);
  });

  test('friction of 0.15 everywhere makes the nut factor of about 0.2 that textbooks use', () => {
    // source: Shigley, chapter 8: f = 0.15 in thread and collar gives K near 0.20 whatever the size (from memory).
    // The collar’s mean diameter there is 1.25 d. Tolerance: the book rounds to two digits.
    for (const [d, P] of [
      [12, 1.75],
      [14, 1.5],
      [20, 2.5],
    ] as const) {
      const K = nutFactor(thread(d, P), {
        inThread: 0.15,
        underHead: 0.15,
        headRadius: (1.25 * d) / 2000,
      });
      expect(Math.abs(K - USUAL.nutFactorDry.value)).toBeLessThan(0.01);
    }
  });
});
