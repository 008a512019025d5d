import { describe, expect, test } from 'vitest';
import { drawn } from '#scenes/paper/drawn.ts';
import { cornerScene } from '#scenes/corner/corner-scene.ts';
import { adjusted, AS_IT_STANDS } from '#scenes/setting.ts';
import { modelNamed } from '../scene-arbitraries.ts';
import { lookIn, markOf, marksOf } from './marks-of.ts';

describe('the path of the contact centre', () => {
  const marks = marksOf('siskin, left', { steer: 20 }, lookIn('top', { traces: ['contact'] }));
  const { points } = markOf(marks, 'path', 'trace-contact');

  test('passes where the contact centre is', () => {
    const { at } = markOf(marks, 'spot', 'contact-centre');
    const nearest = Math.min(...points.map((p) => Math.hypot(p.across - at.across, p.up - at.up)));
    expect(nearest).toBeLessThan(1e-6);
  });

  test('is seen from above only', () => {
    for (const view of ['front', 'side'] as const) {
      const keys = marksOf('siskin, left', {}, lookIn(view, { traces: ['contact'] })).map(
        ({ key }) => key,
      );
      expect(keys).not.toContain('trace-contact');
    }
  });
});

test('the bar on the hub ends on its own trace, in every view', () => {
  for (const view of ['front', 'side', 'top'] as const) {
    const marks = marksOf('linnet, right', { steer: -12 }, lookIn(view, { traces: ['bar'] }));
    const { at } = markOf(marks, 'spot', 'bar-end');
    const { points } = markOf(marks, 'path', 'trace-bar');
    const nearest = Math.min(...points.map((p) => Math.hypot(p.across - at.across, p.up - at.up)));
    expect(nearest).toBeLessThan(1e-6);
  }
});

test('both traces at once leave every key to one shape', () => {
  const look = lookIn('top', { traces: ['bar', 'contact'], names: ['contact', 'ground'] });
  const scene = cornerScene(modelNamed('linnet, left'), adjusted(AS_IT_STANDS, { steer: 8 }), look);
  const keys = drawn(scene).shapes.map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
});
