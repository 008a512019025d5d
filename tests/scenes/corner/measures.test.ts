import { describe, expect, test } from 'vitest';
import { degrees } from '#core/angle.ts';
import type { QuantityId } from '#core/quantities.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import { windowOf } from '#scenes/corner/windows.ts';
import type { Mark } from '#scenes/marks.ts';
import { VIEWS, type Point, type View } from '#scenes/plane.ts';
import { adjusted, AS_IT_STANDS } from '#scenes/setting.ts';
import { MEASURED, MODEL_NAMES, modelNamed } from '../scene-arbitraries.ts';
import { lookIn, markOf, marksOf } from './marks-of.ts';

const measured = (id: QuantityId, view: View, steer = 0, name = 'siskin, left'): readonly Mark[] =>
  marksOf(name, { steer }, lookIn(view, { measures: [id] })).filter((mark) => mark.quantity === id);

describe('a quantity', () => {
  test.each(VIEWS)('is drawn from the %s only where it is seen from there', (view) => {
    const all = new Set(Object.values(MEASURED).flat());
    const seen: readonly QuantityId[] = MEASURED[view];
    for (const id of all) {
      // Straight ahead nothing is lifted, and nothing drawn of it.
      const steer = id === 'lift' ? 30 : 0;
      expect(measured(id, view, steer).length > 0, id).toBe(seen.includes(id));
    }
  });

  test('that turns with the wheel is left to the view from above once the wheel is steered', () => {
    for (const id of ['scrubRadius', 'trail', 'spindleOffset', 'casterOffsetAtCentre'] as const) {
      expect(measured(id, 'front', 5), id).toEqual([]);
      expect(measured(id, 'side', 5), id).toEqual([]);
      expect(measured(id, 'top', 5).length, id).toBeGreaterThan(0);
    }
  });

  test('is said beside its dimension, in the units that are wanted', () => {
    const text = (units: 'metric' | 'us'): string =>
      markOf(
        marksOf('linnet, left', {}, lookIn('front', { measures: ['scrubRadius'], units })),
        'dimension',
        'scrubRadius',
      ).text.replace('\u202f', ' ');
    expect(text('metric')).toBe('scrub radius −8.2 mm');
    expect(text('us')).toBe('scrub radius −0.32 in');
  });
});

describe.each(MODEL_NAMES)('on the %s corner', (name) => {
  const { geometry } = standing(modelNamed(name), AS_IT_STANDS);
  const towards = (id: QuantityId, view: View): { vertex: Point; towards: Point } =>
    markOf(measured(id, view, 0, name), 'angle', id);

  test.each([
    ['inclination', 'front'],
    ['camber', 'front'],
    ['caster', 'side'],
  ] as const)('%s opens in the drawing as the core says', (id, view) => {
    const { vertex, towards: end } = towards(id, view);
    const lean = Math.atan2(end.across - vertex.across, end.up - vertex.up);
    expect(Math.abs(degrees(lean))).toBeCloseTo(Math.abs(degrees(geometry[id])), 2);
  });

  test('the lever’s band on the road is as long as the scrub radius', () => {
    const { points } = markOf(
      measured('scrubRadius', 'front', 0, name),
      'path',
      'scrubRadius-band',
    );
    const across = points.map((point) => point.across);
    const long = Math.max(...across) - Math.min(...across);
    expect(long).toBeCloseTo(1000 * Math.abs(geometry.scrubRadius), 0);
  });
});

describe('a larger tyre', () => {
  test('leaves the dimension below the road on the paper', () => {
    for (const name of MODEL_NAMES) {
      for (const closeness of ['whole', 'road'] as const) {
        const look = lookIn('front', { measures: ['scrubRadius'], closeness });
        const marks = marksOf(name, { radius: 60 }, look);
        const road = markOf(marks, 'ground', 'ground').up;
        const { fromFoot } = markOf(marks, 'dimension', 'scrubRadius');
        const { centre, height } = windowOf(modelNamed(name), 'front', closeness);
        expect(fromFoot.up).toBeLessThan(road);
        expect(fromFoot.up).toBeGreaterThan(centre.up - height / 2);
      }
    }
  });
});

describe('the lift of a steered wheel', () => {
  test('is the distance between the road and the dashed line where it was', () => {
    const setting = adjusted(AS_IT_STANDS, { steer: 35 });
    const lift = valueOf('lift', standing(modelNamed('siskin, left'), setting));
    const marks = marksOf('siskin, left', { steer: 35 }, lookIn('front', { measures: ['lift'] }));
    const { from, to } = markOf(marks, 'dimension', 'lift');
    expect(from.up - to.up).toBeCloseTo(1000 * lift, 6);
    expect(to.up).toBeCloseTo(markOf(marks, 'ground', 'ground').up, 9);
    expect(markOf(marks, 'path', 'road-before').points[0]?.up).toBeCloseTo(from.up, 9);
  });
});

describe('a guess', () => {
  const guessing = (guess: number) =>
    marksOf(
      'siskin, left',
      { spacer: 20 },
      lookIn('front', { measures: ['scrubRadius'], guesses: { scrubRadius: guess } }),
    );

  test('stays in the drawing where the dimension would have ended with it', () => {
    const marks = guessing(0.05);
    const { fromFoot } = markOf(marks, 'dimension', 'scrubRadius');
    const [, foot] = markOf(marks, 'path', 'scrubRadius-guess').points;
    expect((foot?.across ?? NaN) - fromFoot.across).toBeCloseTo(50, 0);
    expect(markOf(marks, 'label', 'scrubRadius-guess-name').text).toBe('your guess');
  });

  test('on the other side is drawn on the other side', () => {
    const marks = guessing(-0.01);
    const { fromFoot } = markOf(marks, 'dimension', 'scrubRadius');
    const [, foot] = markOf(marks, 'path', 'scrubRadius-guess').points;
    expect((foot?.across ?? NaN) - fromFoot.across).toBeCloseTo(-10, 0);
  });

  test('of an angle is a ray from its vertex', () => {
    const look = lookIn('front', { measures: ['inclination'], guesses: { inclination: 0.3 } });
    const marks = marksOf('siskin, left', {}, look);
    const { vertex } = markOf(marks, 'angle', 'inclination');
    const [start, end] = markOf(marks, 'path', 'inclination-guess').points;
    expect(start).toEqual(vertex);
    // Inboard is to the left on a left corner seen from the front.
    const lean = Math.atan2((end?.across ?? NaN) - vertex.across, (end?.up ?? NaN) - vertex.up);
    expect(lean).toBeCloseTo(-0.3, 9);
  });
});
