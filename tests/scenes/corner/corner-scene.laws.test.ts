import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { directionClause, spokenValue } from '#core/display.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';
import { cornerScene } from '#scenes/corner/corner-scene.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import type { Mark } from '#scenes/marks.ts';
import { parameterText } from '#scenes/parameter-text.ts';
import { isLoadId, PARAMETER_IDS, PARAMETERS, type ParameterId } from '#scenes/parameters.ts';
import type { Point } from '#scenes/plane.ts';
import { adjusted, isChanged, type Setting } from '#scenes/setting.ts';
import {
  anyLook,
  anyModelName,
  anySetting,
  anySettingAhead,
  anyView,
  modelNamed,
} from '../scene-arbitraries.ts';
import { lookIn, markOf } from './marks-of.ts';

/** The lengths that a view shows in full, and the way of each that is positive when it goes outboard or forward. */
const LENGTHS = [
  ['scrubRadius', 'front'],
  ['spindleOffset', 'front'],
  ['trail', 'side'],
  ['casterOffsetAtCentre', 'side'],
] as const;

describe('a dimension', () => {
  const drawnLength = (id: QuantityId, marks: readonly Mark[]): number => {
    const { fromFoot, toFoot } = markOf(marks, 'dimension', id);
    return Math.hypot(toFoot.across - fromFoot.across, toFoot.up - fromFoot.up);
  };

  test.each(LENGTHS)(
    'of %s is as long from the %s as the core says, straight ahead',
    (id, view) => {
      fc.assert(
        fc.property(anyModelName, anySettingAhead, (name, setting) => {
          const model = modelNamed(name);
          const { marks } = cornerScene(model, setting, lookIn(view, { measures: [id] }));
          const value = Math.abs(valueOf(id, standing(model, setting)));
          // A wheel with a little toe is seen at a little angle: less than the last digit shown.
          const error = Math.abs(drawnLength(id, marks) - 1000 * value);
          expect(error).toBeLessThan(0.4);
        }),
      );
    },
  );

  test.each(LENGTHS)('of %s is exactly as long from above, at any steer', (id) => {
    fc.assert(
      fc.property(anyModelName, anySetting, (name, setting) => {
        const model = modelNamed(name);
        const { marks } = cornerScene(model, setting, lookIn('top', { measures: [id] }));
        const value = Math.abs(valueOf(id, standing(model, setting)));
        expect(drawnLength(id, marks)).toBeCloseTo(1000 * value, 6);
      }),
    );
  });

  test('of the scrub radius goes outboard from the axis when it is positive', () => {
    fc.assert(
      fc.property(anyModelName, anySettingAhead, (name, setting) => {
        const model = modelNamed(name);
        const { marks } = cornerScene(
          model,
          setting,
          lookIn('front', { measures: ['scrubRadius'] }),
        );
        const { fromFoot, toFoot } = markOf(marks, 'dimension', 'scrubRadius');
        const outboard = name.endsWith('left') ? 1 : -1;
        const value = valueOf('scrubRadius', standing(model, setting));
        fc.pre(Math.abs(value) > 0.001);
        expect(Math.sign((toFoot.across - fromFoot.across) * outboard)).toBe(Math.sign(value));
      }),
    );
  });
});

describe('the right corner', () => {
  /** The same on the other side of the car: what goes to the left there goes to the right. */
  const mirrored = (setting: Setting): Setting => ({
    ...setting,
    steer: -setting.steer,
    side: -setting.side,
    subframe: -setting.subframe,
  });

  /** Every place of a mark, in whatever order. */
  function placesOf(mark: Mark): readonly Point[] {
    switch (mark.kind) {
      case 'path':
        return mark.points;
      case 'circle':
      case 'turn':
        return [mark.centre];
      case 'ground':
        return [{ across: 0, up: mark.up }];
      case 'dimension':
        return [mark.from, mark.to, mark.fromFoot, mark.toFoot];
      case 'angle':
        return [mark.vertex, mark.towards];
      case 'arrow':
        return [mark.from, mark.to];
      default:
        return [mark.at];
    }
  }

  test('is the mirror image of the left one, in every view and at every setting', () => {
    fc.assert(
      fc.property(anyModelName, anySetting, anyLook, (name, setting, look) => {
        const [car = ''] = name.split(',');
        const left = cornerScene(modelNamed(`${car}, left`), setting, look);
        const right = cornerScene(modelNamed(`${car}, right`), mirrored(setting), look);
        expect(right.marks.map(({ key }) => key)).toEqual(left.marks.map(({ key }) => key));
        expect(right.window.centre.across).toBeCloseTo(-left.window.centre.across, 9);
        for (const [i, mark] of left.marks.entries()) {
          // The cross for a force that goes away from the reader is two strokes, and its own mirror image.
          if (/^force-[a-z]+--?1$/.test(mark.key)) continue;
          const others = placesOf(right.marks[i] ?? mark);
          for (const { across, up } of placesOf(mark)) {
            const nearest = Math.min(
              ...others.map((p) => Math.hypot(p.across + across, p.up - up)),
            );
            expect(nearest, mark.key).toBeLessThan(1e-6);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('the marks of a scene', () => {
  test('have keys of their own', () => {
    fc.assert(
      fc.property(anyModelName, anySetting, anyLook, (name, setting, look) => {
        const keys = cornerScene(modelNamed(name), setting, look).marks.map(({ key }) => key);
        expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
      }),
    );
  });

  test('keep their keys and their order while one parameter slides', () => {
    const anySlide = fc
      .constantFrom(...PARAMETER_IDS.filter((id) => !isLoadId(id)))
      .chain((id) => fc.tuple(fc.constant(id), anyPositive(id), anyPositive(id)));
    fc.assert(
      fc.property(
        anyModelName,
        anySettingAhead,
        anyView,
        anySlide,
        (name, setting, view, slide) => {
          const [id, from, to] = slide;
          const look = lookIn(view, {
            names: ['axis', 'contact'],
            measures: ['inclination', 'camber'],
          });
          const keysAt = (value: number): readonly string[] =>
            cornerScene(
              modelNamed(name),
              adjusted({ ...setting, ...UNLOADED }, { [id]: value }),
              look,
            ).marks.map(({ key }) => key);
          expect(keysAt(from)).toEqual(keysAt(to));
        },
      ),
      { numRuns: 60 },
    );
  });

  test('show a state before just where something but steering and loads is set', () => {
    fc.assert(
      fc.property(anyModelName, anySetting, anyLook, (name, setting, look) => {
        const { marks } = cornerScene(modelNamed(name), setting, look);
        expect(marks.some((mark) => mark.before)).toBe(isChanged(setting));
      }),
    );
  });

  test('are numbers everywhere', () => {
    fc.assert(
      fc.property(anyModelName, anySetting, anyLook, (name, setting, look) => {
        const { marks } = cornerScene(modelNamed(name), setting, look);
        const strange = JSON.stringify(marks, (_, value: unknown) =>
          typeof value === 'number' && !Number.isFinite(value) ? 'STRANGE' : value,
        );
        expect(strange).not.toContain('STRANGE');
      }),
    );
  });
});

describe('the description of a scene', () => {
  test('names every measure with its value, and with its direction where it has one', () => {
    fc.assert(
      fc.property(anyModelName, anySetting, anyLook, (name, setting, look) => {
        const model = modelNamed(name);
        const { description } = cornerScene(model, setting, look);
        for (const id of look.measures) {
          const value = valueOf(id, standing(model, setting));
          const about = quantity(id);
          // A sentence begins with a capital letter.
          expect(description).toContain(spokenValue(value, about, look.units).slice(1));
          expect(description).toContain(directionClause(value, about, look.units));
        }
      }),
    );
  });

  test('names what is set, and nothing that is not', () => {
    fc.assert(
      fc.property(anyModelName, anySetting, anyLook, (name, setting, look) => {
        const { description } = cornerScene(modelNamed(name), setting, look);
        const [, changes = ''] = /Changed: (.*?)\. (?=[A-Z]|$)/.exec(`${description} `) ?? [];
        const named = changes === '' ? [] : changes.split('; ');
        expect(named).toEqual(
          PARAMETER_IDS.filter((id) => setting[id] !== 0 && !isNone(id, setting, look.units)).map(
            (id) =>
              `${PARAMETERS[id].name.toLowerCase()} ${parameterText(id, setting[id], look.units)}`,
          ),
        );
      }),
    );
  });
});

const isNone = (id: ParameterId, setting: Setting, units: 'metric' | 'us'): boolean =>
  parameterText(id, setting[id], units) === PARAMETERS[id].none;

const UNLOADED = Object.fromEntries(
  PARAMETER_IDS.filter(isLoadId).map((id) => [id, 0]),
) as Partial<Setting>;

/** A value that is set, and set to one side. */
const anyPositive = (id: ParameterId): fc.Arbitrary<number> =>
  fc.double({ min: 0.2 * PARAMETERS[id].most, max: PARAMETERS[id].most, noNaN: true });
