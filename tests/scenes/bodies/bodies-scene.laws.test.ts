import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { opposite } from '#core/moved-action.ts';
import { bodiesScene } from '#scenes/bodies/bodies-scene.ts';
import { BODIES_CASE_IDS, BODIES_CASES, type BodiesCase } from '#scenes/bodies/cases.ts';
import { deedsOf } from '#scenes/bodies/deeds.ts';
import { leverScene } from '#scenes/bodies/lever-scene.ts';
import { drawn, type Drawing } from '#scenes/paper/drawn.ts';
import { PAPER } from '#scenes/paper/frame.ts';
import { textWidth } from '#scenes/paper/label-placement.ts';
import type { TextShape } from '#scenes/paper/shapes.ts';
import { expectNear } from '../../core/near.ts';
import { anyModelName, anyValue, modelNamed } from '../scene-arbitraries.ts';
import { cornerOf, settingOf } from './bodies-of.ts';

const anyCase = fc.constantFrom<BodiesCase>(...BODIES_CASE_IDS);
const anyShare = fc.double({ min: 0, max: 1, noNaN: true });

const anyLoaded = anyCase.chain((which) =>
  fc.record({
    which: fc.constant(which),
    load: anyValue(BODIES_CASES[which].load),
    name: anyModelName,
  }),
);

const HALF_LINE = 8;
const textsOf = ({ shapes }: Drawing): readonly TextShape[] =>
  shapes.filter((shape) => shape.kind === 'text');

describe('any drawing of wheel and carrier', () => {
  test('has a key for each shape and a number for each place', () => {
    fc.assert(
      fc.property(
        anyLoaded,
        anyShare,
        fc.option(anyShare, { nil: undefined }),
        ({ which, load, name }, apart, carried) => {
          const look = { which, apart, carried, units: 'metric' } as const;
          const setting = settingOf({ [BODIES_CASES[which].load]: load });
          for (const scene of [bodiesScene, leverScene]) {
            const { shapes } = drawn(scene(modelNamed(name), setting, look));
            expect(new Set(shapes.map(({ key }) => key)).size).toBe(shapes.length);
            expect(JSON.stringify(shapes)).not.toMatch(/NaN|null|Infinity/);
          }
        },
      ),
    );
  });

  test.each([0, 1])('has its words on the paper and clear of one another (apart %d)', (apart) => {
    fc.assert(
      fc.property(anyLoaded, ({ which, load, name }) => {
        const setting = settingOf({ [BODIES_CASES[which].load]: load });
        const look = { which, apart, units: 'metric' } as const;
        const texts = textsOf(drawn(bodiesScene(modelNamed(name), setting, look)));
        for (const [i, { text, x, y }] of texts.entries()) {
          const half = textWidth(text) / 2;
          expect(Math.min(x - half, PAPER.width - x - half), text).toBeGreaterThanOrEqual(0);
          expect(Math.min(y, PAPER.height - y), text).toBeGreaterThanOrEqual(HALF_LINE);
          for (const other of texts.slice(i + 1)) {
            const across = Math.abs(x - other.x) - half - textWidth(other.text) / 2;
            const upright = Math.abs(y - other.y) - 2 * HALF_LINE;
            expect(Math.max(across, upright), `${text} / ${other.text}`).toBeGreaterThan(-0.05);
          }
        }
      }),
      { numRuns: 300 },
    );
  });
});

test('what one body does to the other it gets back', () => {
  fc.assert(
    fc.property(anyLoaded, ({ which, load, name }) => {
      const changes = { [BODIES_CASES[which].load]: load };
      const deeds = deedsOf(cornerOf(name, changes), settingOf(changes), which);
      for (const pair of ['bearing', 'brake']) {
        const [onWheel, onCarrier, ...more] = deeds.filter((deed) => deed.pair === pair);
        expect(more).toEqual([]);
        if (!onWheel || !onCarrier) continue;
        expect([onWheel.body, onCarrier.body]).toEqual(['wheel', 'carrier']);
        const back = opposite(onWheel.action);
        expectNear(onCarrier.action.force, back.force);
        expectNear(onCarrier.action.couple, back.couple);
      }
    }),
  );
});
