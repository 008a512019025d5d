import { describe, expect, test } from 'vitest';
import { changed, NO_CHANGE } from '#core/change.ts';
import { spinAxis, type Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { radians } from '#core/angle.ts';
import { vector } from '#core/vector.ts';
import { workshopAxis } from '#core/workshop-axis.ts';

function uprightCorner(scrubRadius: number, inclination: number): Corner {
  const wheel = {
    side: 'left',
    wheelCentre: vector(0, 0.75, 0.3),
    spin: spinAxis('left', 0, 0),
    loadedRadius: 0.3,
  } as const;
  return {
    ...wheel,
    axis: workshopAxis(wheel, { inclination, caster: radians(4), scrubRadius, trail: 0.02 }),
  };
}

describe('a spacer of 50 mm', () => {
  const source = 'common practice, no source';
  const change = { ...NO_CHANGE, spacer: 0.05 };

  test.each([
    { from: 15, to: 65 },
    { from: -15, to: 35 },
  ])(`turns a scrub radius of $from mm into $to mm (${source})`, ({ from, to }) => {
    const { scrubRadius } = measure(changed(uprightCorner(from / 1000, radians(12)), change));
    expect(1000 * scrubRadius).toBeCloseTo(to, 9);
  });

  test(`turns a spindle offset of 50 mm into 100 mm (${source})`, () => {
    const inclination = Math.atan(0.05 / 0.3);
    const corner = uprightCorner(0, inclination);
    expect(1000 * measure(corner).spindleOffset).toBeCloseTo(50, 9);
    expect(1000 * measure(changed(corner, change)).spindleOffset).toBeCloseTo(100, 9);
  });
});
