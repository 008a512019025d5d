import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cornerScene } from '#scenes/corner/corner-scene.ts';
import { drawn, type Drawing } from '#scenes/paper/drawn.ts';
import { PAPER } from '#scenes/paper/frame.ts';
import { textWidth } from '#scenes/paper/label-placement.ts';
import type { TextShape } from '#scenes/paper/shapes.ts';
import { anyLook, anyModelName, anySetting, modelNamed } from '../scene-arbitraries.ts';

/** Half the height of a line of words on paper, as it looks: most letters are lower. */
const HALF_LINE = 8;

/** Holds drawings of any corner, in any look, against a law. */
function expectOfAny(law: (drawing: Drawing) => void, numRuns = 100): void {
  fc.assert(
    fc.property(anyModelName, anySetting, anyLook, (name, setting, look) => {
      law(drawn(cornerScene(modelNamed(name), setting, look)));
    }),
    { numRuns },
  );
}

const textsOf = ({ shapes }: Drawing): readonly TextShape[] =>
  shapes.filter((shape) => shape.kind === 'text');

describe('any drawing of a corner', () => {
  test('has no two words that overlap', () => {
    expectOfAny((drawing) => {
      const texts = textsOf(drawing);
      for (const [i, one] of texts.entries()) {
        for (const other of texts.slice(i + 1)) {
          const across =
            Math.abs(one.x - other.x) - (textWidth(one.text) + textWidth(other.text)) / 2;
          const upright = Math.abs(one.y - other.y) - 2 * HALF_LINE;
          expect(Math.max(across, upright), `${one.text} / ${other.text}`).toBeGreaterThan(-0.05);
        }
      }
    }, 300);
  });

  test('has every word on the paper', () => {
    expectOfAny((drawing) => {
      for (const { text, x, y } of textsOf(drawing)) {
        const half = textWidth(text) / 2;
        expect(Math.min(x - half, PAPER.width - x - half), text).toBeGreaterThanOrEqual(0);
        expect(Math.min(y - HALF_LINE, PAPER.height - y - HALF_LINE), text).toBeGreaterThanOrEqual(
          0,
        );
      }
    });
  });

  test('has every grip on the paper', () => {
    expectOfAny(({ grips }) => {
      for (const { x, y } of grips) {
        expect(Math.min(x, y, PAPER.width - x, PAPER.height - y)).toBeGreaterThan(12);
      }
    });
  });

  test('has no number with more than two decimals, and none that is no number', () => {
    expectOfAny(({ shapes, grips }) => {
      for (const shape of shapes) {
        const written = shape.kind === 'path' ? shape.d : `${shape.x} ${shape.y}`;
        expect(written, shape.key).not.toMatch(/\.\d{3}|e-?\d|NaN|Infinity|undefined/);
      }
      for (const { x, y } of grips)
        expect(`${x} ${y}`).toMatch(/^-?\d+(\.\d{1,2})? -?\d+(\.\d{1,2})?$/);
    });
  });

  test('has no two shapes or grips of one key', () => {
    expectOfAny(({ shapes, grips }) => {
      const keys = [...shapes, ...grips].map(({ key }) => key);
      expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
    });
  });

  test('is drawn the same a second time', () => {
    fc.assert(
      fc.property(anyModelName, anySetting, anyLook, (name, setting, look) => {
        const draw = (): Drawing => drawn(cornerScene(modelNamed(name), { ...setting }, look));
        expect(draw()).toEqual(draw());
      }),
      { numRuns: 30 },
    );
  });
});
