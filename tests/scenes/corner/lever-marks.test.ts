import { describe, expect, test } from 'vitest';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import type { Mark } from '#scenes/marks.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { modelNamed } from '../scene-arbitraries.ts';
import { lookIn, markOf, marksOf } from './marks-of.ts';

const above = (changes: Partial<Setting>, name = 'linnet, left'): readonly Mark[] =>
  marksOf(name, changes, lookIn('top'));
const moment = (id: 'driveMoment' | 'brakeMoment' | 'blowMoment', changes: Partial<Setting>) =>
  valueOf(id, standing(modelNamed('linnet, left'), adjusted(AS_IT_STANDS, changes)));

describe('the bent arrow round the axis', () => {
  test('goes counterclockwise for a moment to the left, on both sides of the car', () => {
    for (const [name, sign] of [
      ['linnet, left', 1],
      ['linnet, right', -1],
    ] as const) {
      const { sweep } = markOf(above({ blow: 4000 }, name), 'turn', 'turn-blow');
      expect(Math.sign(sweep), name).toBe(sign);
    }
  });

  test('is bent the farther the larger the moment', () => {
    const bent = (blow: number): number => markOf(above({ blow }), 'turn', 'turn-blow').sweep;
    expect(bent(4000)).toBeGreaterThan(bent(2000));
    expect(bent(8000)).toBeLessThan(2 * Math.PI);
  });

  test('keeps clear of that of another load', () => {
    const marks = above({ brake: 2500, drive: -2500 });
    const [first, second] = ['turn-brake', 'turn-drive'].map((key) => markOf(marks, 'turn', key));
    expect(second?.radius).toBeGreaterThan(first?.radius ?? NaN);
  });
});

describe('a shaft out of line', () => {
  const bent = { drive: 1500, shaftRise: 8 } as const;

  test('adds T·tan of half its angle about an upright line', () => {
    const { corner } = standing(modelNamed('linnet, left'), AS_IT_STANDS);
    const couple = 1500 * 0.292 * Math.tan((4 * Math.PI) / 180);
    // The Linnet's wheel leans a little, and so does the line that the couple stands on.
    expect(moment('driveMoment', bent) - moment('driveMoment', { drive: 1500 })).toBeCloseTo(
      couple * corner.axis.direction.z,
      0,
    );
    expect(markOf(above(bent), 'label', 'couple-drive-name').text).toContain(couple.toFixed(1));
  });

  test('turns a driven left wheel to the left where its outer end is up, to the right where it is down', () => {
    const inLine = moment('driveMoment', { drive: 1500 });
    expect(moment('driveMoment', bent)).toBeGreaterThan(inLine);
    expect(moment('driveMoment', { drive: 1500, shaftRise: -8 })).toBeLessThan(inLine);
  });

  test('in line brings no couple to be drawn', () => {
    expect(above({ drive: 1500 }).map(({ key }) => key)).not.toContain('couple-drive');
  });
});

test('a rolling resistance counts at the wheel centre, like a blow', () => {
  const model = modelNamed('linnet, left');
  const drag = valueOf('dragMoment', standing(model, adjusted(AS_IT_STANDS, { drag: 200 })));
  expect(20 * drag).toBeCloseTo(moment('blowMoment', { blow: 4000 }), 9);
});
