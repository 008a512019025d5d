import { curveCatmullRom, curveCatmullRomClosed, line } from 'd3';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { smoothPath } from '#scenes/paper/smooth-path.ts';

const ground = fc.integer({ min: -400, max: 400 });
const places = fc.uniqueArray(fc.record({ x: ground, y: ground }), {
  minLength: 3,
  maxLength: 12,
  selector: ({ x, y }) => `${x} ${y}`,
});

const numbers = (path: string): readonly number[] => (path.match(/-?[\d.]+/g) ?? []).map(Number);

test.each([
  ['open', false, curveCatmullRom],
  ['closed', true, curveCatmullRomClosed],
] as const)('an %s path is the curve that d3 draws', (_name, closed, curve) => {
  const theirs = line<{ x: number; y: number }>(
    ({ x }) => x,
    ({ y }) => y,
  ).curve(curve.alpha(0.5));
  fc.assert(
    fc.property(places, (drawn) => {
      const ours = numbers(smoothPath(drawn, closed));
      const reference = numbers(theirs(drawn) ?? '');
      expect(ours.length).toBe(reference.length);
      // Ours are rounded to two decimals, theirs to three.
      for (const [i, value] of ours.entries())
        expect(Math.abs(value - (reference[i] ?? NaN))).toBeLessThan(0.0061);
    }),
  );
});
