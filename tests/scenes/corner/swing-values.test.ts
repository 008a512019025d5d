import fc from 'fast-check';
import { expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';
import type { QuantityId } from '#core/quantities.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import { swingOf } from '#scenes/corner/swing-values.ts';
import { PARAMETERS } from '#scenes/parameters.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { anyModelName, MODEL_NAMES, modelNamed } from '../scene-arbitraries.ts';

const at = (changes: Partial<Setting>, name: string) =>
  standing(modelNamed(name), adjusted(AS_IT_STANDS, changes));

test.each(MODEL_NAMES)(
  'on the %s corner the swing finds the axis, as well as gauges can be read',
  (name) => {
    const now = at({}, name);
    const off = (found: QuantityId, true_: 'caster' | 'inclination'): number =>
      Math.abs(degrees(valueOf(found, now) - valueOf(true_, now)));
    // Half a tenth on two readings, times 1.46, and what the rule leaves out.
    expect(off('casterBySwing', 'caster')).toBeLessThan(0.2);
    expect(off('casterFromReadings', 'caster')).toBeLessThan(0.2);
    expect(off('inclinationBySwing', 'inclination')).toBeLessThan(0.4);
    // Half a tenth on three readings, over 1 − cos 20°.
    expect(off('inclinationFromReadings', 'inclination')).toBeLessThan(1.8);
  },
);

test('the trade’s factor makes every caster larger by the same share', () => {
  for (const name of MODEL_NAMES) {
    const now = at({}, name);
    const share = valueOf('casterByTradeFactor', now) / valueOf('casterBySwing', now);
    expect(share).toBeCloseTo(1.5 * 2 * Math.sin(radians(20)), 12);
  }
});

test('a corner can be swung however its pivots and its camber are set, and wherever it is steered', () => {
  const anyOf = (id: keyof Setting) =>
    fc.integer({ min: PARAMETERS[id].least, max: PARAMETERS[id].most });
  fc.assert(
    fc.property(
      anyModelName,
      anyOf('upperInboard'),
      anyOf('upperRearward'),
      anyOf('camberAtCarrier'),
      anyOf('steer'),
      (name, upperInboard, upperRearward, camberAtCarrier, steer) => {
        const set = { upperInboard, upperRearward, camberAtCarrier };
        const now = at({ ...set, steer }, name);
        expect(Number.isFinite(valueOf('inclinationFromReadings', now))).toBe(true);
        expect(swingOf(now.ahead)).toEqual(swingOf(at(set, name).ahead));
      },
    ),
    { numRuns: 60 },
  );
});
