import { describe, expect, test } from 'vitest';
import { faultLine, faultsOf } from '#core/fault.ts';
import { benchIn } from '#core/judgement/bench-link.ts';
import { readBench, readBenchParts } from '#core/judgement/read-bench.ts';
import { edited, renamed, replaced, valueAt, waysInto, written } from '../document/edit.ts';
import { GARAGE_FILES } from '../../garage-benches.ts';

const FILE = GARAGE_FILES.get('hatchback-spacers');
const lines = (value: unknown): readonly string[] => faultsOf(readBench(value)).map(faultLine);
const paths = (value: unknown): readonly string[] =>
  faultsOf(readBench(value)).map(({ path }) => path);

/** Keys of a bench that may be left out. */
const OPTIONAL =
  /^car\.(fixing|values\.\w+|corner\.(steering|hub)|corner\.wheel\.(camber_deg|toe_deg|rollingRadius_mm)|corner\.steering\.assist)$|^variants\[\d\]\.both\.\w+$/;

describe('a bench document', () => {
  test.each(Array.from(GARAGE_FILES))('%s is one', (_, file) => {
    expect(lines(file)).toEqual([]);
  });

  test.each([null, NaN, {}, [], true])('is at fault where a value is %j', (by) => {
    const unnoticed = waysInto(FILE).filter((way) => {
      const known = written(way);
      if (JSON.stringify(by) === '{}' && /^(car\.values|variants\[\d\]\.both)$/.test(known))
        return false;
      if (Array.isArray(by) && known === 'variants') return false;
      return !paths(replaced(FILE, way, by)).some((path) => path.startsWith(known));
    });
    expect(unnoticed.map(written)).toEqual([]);
  });

  test('is at fault where a key is missing that has to be there', () => {
    const unnoticed = waysInto(FILE)
      .filter((way) => typeof way.at(-1) === 'string' && !OPTIONAL.test(written(way)))
      .filter((way) => paths(replaced(FILE, way, undefined)).length === 0);
    expect(unnoticed.map(written)).toEqual([]);
  });

  test('is at fault where a key is called otherwise', () => {
    const unnoticed = waysInto(FILE)
      .filter((way) => typeof way.at(-1) === 'string')
      .filter((way) => paths(renamed(FILE, way, 'odd')).length === 0);
    expect(unnoticed.map(written)).toEqual([]);
  });
});

describe('a fault says where and what is allowed', () => {
  test.each([
    [
      { version: 3 },
      'version: is 3, which a newer copy of the course has written; allowed: up to 2 here; reload the page for a newer copy',
    ],
    [{ version: 0 }, 'version: is 0; allowed: a whole number from 1 to 2'],
    [
      { 'car.tyre': '195/66 R15' },
      'car.tyre: has the aspect ratio 66; allowed: multiples of 5 from 20 to 95, in percent of the width',
    ],
    [
      { 'car.values.wheelLoad_N.plusMinus': 4050 },
      'car.values.wheelLoad_N.plusMinus: is 4050, which reaches down to nought; allowed: less than the value, 4050',
    ],
    [
      { 'car.values.camber_deg.source': 'rumour' },
      'car.values.camber_deg.source: is the text "rumour"; allowed: "given", "measured", "sheet", "typical", "guess"',
    ],
    [
      { 'car.values.upperUp_mm.value': 100 },
      'car.values.upperUp_mm: puts the upper pivot no higher than the lower one; allowed: a height above that of the lower pivot',
    ],
    [
      { 'variants[1].both.spacer_mm': -5 },
      'variants[1].both.spacer_mm: is -5; allowed: a number from 0 to 100 mm',
    ],
    [
      { 'variants[0].both.rimWidth_in': 8 },
      'variants[0].both.inset_mm: is missing beside a rim of another width; allowed: the inset of the new wheel, as cast into it',
    ],
    [
      { 'car.corner.change': { spacer_mm: 5 } },
      'car.corner.change: is there, but the bench has loads and changes of its own; allowed: a corner as it stands, straight ahead',
    ],
    [
      { 'car.corner.wheel.loadedRadius_mm': 0.3 },
      'car.corner.wheel.loadedRadius_mm: is 0.3, which looks like metres; allowed: a number from 50 to 2000 mm',
    ],
  ])('%j', (edits, line) => {
    const [path = ''] = Object.keys(edits);
    const parent = path.split(/\.(?=\w+$)/)[0] ?? '';
    const added =
      valueAt(
        FILE,
        path.split(/[.[\]]+/).map((key) => (/^\d+$/.test(key) ? Number(key) : key)),
      ) === undefined;
    const file = added
      ? edited(FILE, {
          [parent]: {
            ...(valueAt(
              FILE,
              parent
                .split(/[.[\]]+/)
                .filter(Boolean)
                .map((key) => (/^\d+$/.test(key) ? Number(key) : key)),
            ) as object),
            [path.split('.').at(-1) ?? '']: Object.values(edits)[0] as unknown,
          },
        })
      : edited(FILE, edits);
    expect(lines(file)).toContain(line);
  });

  test('more than four variants are too many', () => {
    const variants = Array.from({ length: 5 }, () => ({ name: 'x', both: {} }));
    expect(lines(edited(FILE, { variants }))).toEqual([
      'variants: has 5 members; allowed: up to 4',
    ]);
  });

  test('camber needs a lower pivot: an axis by angles has none until it is measured', () => {
    const axis = { inclination_deg: 13, caster_deg: 4, scrubRadius_mm: -5, trail_mm: 18 };
    const variants = [{ name: 'camber', both: { camberAtCarrier_deg: -1 } }];
    const file = edited(FILE, { 'car.corner.axis': axis, 'car.values': {}, variants });
    expect(paths(file)).toEqual(['variants[0].both.camberAtCarrier_deg']);
    const lowerUp_mm = { value: 180, plusMinus: 3, source: 'measured' };
    expect(paths(edited(file, { 'car.values': { lowerUp_mm } }))).toEqual([]);
  });

  test('work in progress may be read whose numbers do not fit together yet', () => {
    const file = edited(FILE, { 'car.values.upperUp_mm.value': 100 });
    expect(readBenchParts(file).ok).toBe(true);
    expect(readBench(file).ok).toBe(false);
  });
});

test.each(['', 'hello', '{', '#bench=', '#bench=a', '#bench=aAAAA', '#bench=z0000'])(
  '%j holds no bench',
  (text) => {
    expect(faultsOf(benchIn(text))).toHaveLength(1);
  },
);
