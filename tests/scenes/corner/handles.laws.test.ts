import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { cornerScene } from '#scenes/corner/corner-scene.ts';
import { dragged, growsRightward, handleFor } from '#scenes/corner/handles.ts';
import type { Sketch } from '#scenes/corner/sketch.ts';
import { standing } from '#scenes/corner/standing.ts';
import type { Handle } from '#scenes/marks.ts';
import { drawn } from '#scenes/paper/drawn.ts';
import { allowedValue, PARAMETER_IDS, PARAMETERS, wholeStep } from '#scenes/parameters.ts';
import { point, VIEWS } from '#scenes/plane.ts';
import { AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import {
  anyCloseness,
  anyModelName,
  anySetting,
  anyValue,
  anyView,
  MODEL_NAMES,
  modelNamed,
} from '../scene-arbitraries.ts';
import { lookIn } from './marks-of.ts';

// Everything that can be set is tried in every way it can be seen.
vi.setConfig({ testTimeout: 600_000 });

const sketchOf = (name: string, view: Sketch['view']): Sketch => ({
  view,
  side: modelNamed(name).corner.side,
});

/** The parameters that have a handle in some view. */
const HELD = PARAMETER_IDS.filter((id) =>
  VIEWS.some((view) =>
    handleFor(
      id,
      sketchOf('linnet, left', view),
      standing(modelNamed('linnet, left'), AS_IT_STANDS),
      'whole',
    ),
  ),
);

const anySlide = fc
  .constantFrom(...HELD)
  .chain((id) => fc.tuple(fc.constant(id), anyValue(id), anyValue(id)));

test('the pivots, the subframe, the spacer and the steer can be held in the drawing', () => {
  expect(HELD).toEqual([
    'upperInboard',
    'upperRearward',
    'lowerOutboard',
    'lowerForward',
    'subframe',
    'spacer',
    'steer',
  ]);
});

describe('a handle carried to where the drawing has it at another value', () => {
  test('gives that value, to the step', () => {
    fc.assert(
      fc.property(
        anyModelName,
        anySetting,
        anyView,
        anyCloseness,
        anySlide,
        (name, setting, view, closeness, [id, from, to]) => {
          const sketch = sketchOf(name, view);
          const at = (value: number): Handle | undefined =>
            handleFor(
              id,
              sketch,
              standing(modelNamed(name), { ...setting, [id]: value }),
              closeness,
            );
          const [start, end] = [at(from), at(to)];
          fc.pre(start !== undefined && end !== undefined);
          const value = dragged(start, sketch, from, start.at, end.at);
          expect(Math.abs(value - to)).toBeLessThan(0.5 * PARAMETERS[id].step);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('a handle', () => {
  const at = (setting: Partial<Setting>, id: (typeof HELD)[number], view: Sketch['view']) => {
    const all = { ...AS_IT_STANDS, ...setting };
    const found = handleFor(
      id,
      sketchOf('siskin, left', view),
      standing(modelNamed('siskin, left'), all),
      'whole',
    );
    if (!found) throw new Error(`${id} has no handle in the ${view} view`);
    return found;
  };

  test.each([
    ['lowerOutboard', 'front', 10],
    ['upperInboard', 'front', -10],
    ['upperRearward', 'side', 10],
    ['lowerForward', 'side', -10],
    ['subframe', 'front', 10],
  ] as const)(
    'of %s carried 10 mm to the right in the %s view moves it by %d mm',
    (id, view, by) => {
      const handle = at({}, id, view);
      const to = point(handle.at.across + 10, handle.at.up);
      const value = dragged(handle, sketchOf('siskin, left', view), 0, handle.at, to);
      expect(value).toBeCloseTo(by, 9);
    },
  );

  test('of a spacer goes farther than the spacer when the wheel is seen at an angle', () => {
    const handle = at({ steer: 40 }, 'spacer', 'front');
    const to = point(handle.at.across + 10, handle.at.up);
    const value = dragged(handle, sketchOf('siskin, left', 'front'), 0, handle.at, to);
    expect(value).toBeGreaterThan(12);
    expect(value).toBeLessThan(15);
  });

  test('does not mind how high it is carried, unless it goes round', () => {
    const handle = at({}, 'spacer', 'front');
    const to = point(handle.at.across, handle.at.up + 300);
    expect(dragged(handle, sketchOf('siskin, left', 'front'), 5, handle.at, to)).toBe(5);
  });

  test('of the steer turns to the left when it is carried to the right, on both sides', () => {
    const handle = at({}, 'steer', 'top');
    const to = point(handle.at.across + 30, handle.at.up);
    expect(dragged(handle, sketchOf('siskin, left', 'top'), 0, handle.at, to)).toBeGreaterThan(3);
    for (const side of ['left', 'right'] as const) {
      expect(growsRightward('steer', { view: 'top', side })).toBe(1);
    }
  });

  test('of the steer goes on past the lock without jumping to the other one', () => {
    const handle = at({}, 'steer', 'top');
    const { centre } = handle;
    if (!centre) throw new Error('the steer goes round something');
    // To the level of the axis on the left, and a little beyond.
    const values = [-1, 1].map((up) =>
      dragged(
        handle,
        sketchOf('siskin, left', 'top'),
        0,
        handle.at,
        point(centre.across - 300, centre.up + up),
      ),
    );
    expect(values.map((value) => allowedValue('steer', value))).toEqual([-40, -40]);
  });
});

test('arrow keys go the way of the drawing', () => {
  for (const name of MODEL_NAMES) {
    for (const view of VIEWS) {
      const sketch = sketchOf(name, view);
      for (const id of HELD) {
        const across = (value: number): number | undefined =>
          handleFor(
            id,
            sketch,
            standing(modelNamed(name), { ...AS_IT_STANDS, [id]: value }),
            'whole',
          )?.at.across;
        const [less, more] = [across(0), across(10)];
        if (less === undefined || more === undefined) continue;
        expect(Math.sign(more - less), `${id} from the ${view}`).toBe(growsRightward(id, sketch));
      }
    }
  }
});

test('a grip that is on the paper stays there while it is dragged from bound to bound', () => {
  for (const name of MODEL_NAMES) {
    for (const view of VIEWS) {
      for (const closeness of ['whole', 'road', 'hub'] as const) {
        for (const id of HELD) {
          const { least, most, step } = PARAMETERS[id];
          const gripsAt = (value: number): number => {
            const setting = { ...AS_IT_STANDS, [id]: wholeStep(id, value) };
            const look = lookIn(view, { closeness, handles: [id] });
            return drawn(cornerScene(modelNamed(name), setting, look)).grips.length;
          };
          const counts = [least, 0.5 * least, 0, step, 0.5 * most, most].map(gripsAt);
          expect(new Set(counts).size, `${id} of ${name} from the ${view}, ${closeness}`).toBe(1);
        }
      }
    }
  }
});
