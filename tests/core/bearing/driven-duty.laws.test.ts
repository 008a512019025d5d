import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drivenDuty } from '#core/bearing/driven-duty.ts';
import { shareFaults } from '#core/bearing/duty.ts';

const part = (most: number) => fc.double({ min: 0, max: most, noNaN: true });

test('shares of driving always add up to the whole way, and none is negative', () => {
  fc.assert(
    fc.property(part(0.3), part(0.3), part(0.2), part(0.2), part(2), (a, b, rough, more, pace) => {
      const duty = [
        { share: 1 - a - b, vertical: 4000, inward: 0 },
        { share: a, vertical: 5500, inward: 2000 },
        { share: b, vertical: 2500, inward: -800 },
      ];
      const driven = drivenDuty(duty, { load: 1, outer: more, inner: -more, rough, pace });
      expect(shareFaults(driven.map(({ share }) => share))).toEqual([]);
    }),
  );
});
