import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bearingScene } from '#scenes/bearing/bearing-scene.ts';
import { BARS_PAPER, rowBars } from '#scenes/bearing/row-bars.ts';
import { drawn } from '#scenes/paper/drawn.ts';
import { textWidth } from '#scenes/paper/label-placement.ts';
import { anyModelName, anyValue, modelNamed } from '../scene-arbitraries.ts';
import { bearingLook, settingOf } from './bearing-of.ts';

const anyChange = fc.record({
  weight: anyValue('weight'),
  side: anyValue('side'),
  spacer: anyValue('spacer'),
  inset: anyValue('inset'),
  radius: anyValue('radius'),
});

const anyBearingLook = fc
  .record({
    view: fc.constantFrom('section', 'wheel'),
    duty: fc.constantFrom('straight', 'turn'),
    measures: fc.subarray([
      'rowPitch',
      'pressureCentreSpread',
      'loadLineOffset',
      'loadedRadius',
      'loadCrossing',
      'outboardThrust',
    ] as const),
    named: fc.boolean(),
    handles: fc.subarray(['spacer', 'inset', 'side'] as const),
    way: fc.option(fc.double({ min: 0, max: 5, noNaN: true }), { nil: undefined }),
    units: fc.constantFrom('metric', 'us'),
  })
  .map((look) => bearingLook({ ...look, guesses: { inboardRadial: 1234 } }));

test('any drawing of a bearing has a key for each shape and a number for each place', () => {
  fc.assert(
    fc.property(anyModelName, anyChange, anyBearingLook, (name, change, look) => {
      const setting = settingOf(change);
      const model = modelNamed(name);
      for (const { shapes } of [
        drawn(bearingScene(model, setting, look)),
        drawn(rowBars(model, setting, look), BARS_PAPER),
      ]) {
        expect(new Set(shapes.map(({ key }) => key)).size).toBe(shapes.length);
        expect(JSON.stringify(shapes)).not.toMatch(/NaN|null|Infinity/);
      }
    }),
  );
});

test('a whole wheel in a bend has no two words that overlap', () => {
  const measures = ['loadCrossing'] as const;
  fc.assert(
    fc.property(anyModelName, anyValue('weight'), anyValue('side'), (name, weight, side) => {
      const look = bearingLook({ view: 'wheel', duty: 'turn', measures });
      const { shapes } = drawn(bearingScene(modelNamed(name), settingOf({ weight, side }), look));
      const texts = shapes.filter((shape) => shape.kind === 'text');
      for (const [i, one] of texts.entries()) {
        for (const other of texts.slice(i + 1)) {
          const across =
            Math.abs(one.x - other.x) - (textWidth(one.text) + textWidth(other.text)) / 2;
          const upright = Math.abs(one.y - other.y) - 17;
          expect(Math.max(across, upright), `${one.text} / ${other.text}`).toBeGreaterThan(-0.05);
        }
      }
    }),
    // Both stood below the road once.
    { examples: [['siskin, left', 2800, 950]] },
  );
});
