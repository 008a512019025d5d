import { describe, expect, test } from 'vitest';
import { textWidth } from '#scenes/paper/label-placement.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { swingDrawing, type SwingDrawing } from '#scenes/swing/swing-drawing.ts';
import { SWING_GAUGES, type SwingGauge } from '#scenes/swing/swing-gauges.ts';
import { MODEL_NAMES, modelNamed } from '../scene-arbitraries.ts';

const swing = (
  gauge: SwingGauge,
  changes: Partial<Setting> = {},
  name = 'siskin, left',
): SwingDrawing => swingDrawing(modelNamed(name), adjusted(AS_IT_STANDS, changes), gauge);

const words = ({ shapes }: SwingDrawing): ReadonlyMap<string, string> =>
  new Map(shapes.flatMap((shape) => (shape.kind === 'text' ? [[shape.key, shape.text]] : [])));

/** The corners of a closed path, in the order in which it is written. */
function corners({ shapes }: SwingDrawing, key: string): readonly { x: number; y: number }[] {
  const shape = shapes.find((one) => one.key === key);
  if (shape?.kind !== 'path') throw new Error(`there is no path ${key}`);
  return [...shape.d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }));
}

describe('the swing of a left wheel', () => {
  test('shows readings that give the caster on a pocket calculator', () => {
    const said = words(swing('camber'));
    const size = (key: string): number => parseFloat(said.get(key) ?? '');
    expect(said.get('turnedIn-reading')).toMatch(/ inboard$/);
    expect(said.get('turnedOut-reading')).toMatch(/ outboard$/);
    const difference = size('turnedOut-reading') + size('turnedIn-reading');
    const caster = difference / (2 * Math.sin((20 * Math.PI) / 180));
    expect(said.get('sum')).toMatch(new RegExp(`= ${caster.toFixed(1)}°$`));
  });

  test('writes its factor finely enough for the caster beside it', () => {
    // Worked by hand: 6.4 · 1.46 = 9.34, 6.4 · 1.462 = 9.36.
    const sum = words(swing('camber', { upperRearward: 15 })).get('sum') ?? '';
    const [out = NaN, into = NaN, factor = NaN, caster = NaN] = (
      sum.replaceAll('−', '-').match(/-?\d+\.\d+/g) ?? []
    ).map(Number);
    expect(((out - into) * factor).toFixed(1)).toBe(caster.toFixed(1));
  });

  test('has the front of the wheel, below, going outboard when it is turned out', () => {
    const [, , right, left] = corners(swing('camber'), 'turnedOut-wheel-above');
    // The two corners at the front; the plate’s middle is at 330.
    expect(((right?.x ?? 0) + (left?.x ?? 0)) / 2).toBeGreaterThan(330);
  });

  test('leans its wheel to the side that the reading says', () => {
    const top = (position: string): number => {
      const [left, right] = corners(swing('camber'), `${position}-wheel`);
      return ((left?.x ?? 0) + (right?.x ?? 0)) / 2;
    };
    expect(top('turnedOut')).toBeGreaterThan(330);
    expect(top('turnedIn')).toBeLessThan(70);
  });

  test('has the front end of the bar, to the left, going up when the braked wheel is turned out', () => {
    const drawing = swing('pitch');
    const [front, rear] = corners(drawing, 'turnedOut-bar');
    expect(front?.x).toBeLessThan(rear?.x ?? 0);
    expect(front?.y).toBeLessThan(rear?.y ?? 0);
    expect(words(drawing).get('turnedOut-reading')).toMatch(/ up$/);
  });
});

test('a camber set at the carrier moves the readings and leaves the caster', () => {
  const [before, after] = [swing('camber'), swing('camber', { camberAtCarrier: -2 })].map(words);
  expect(after?.get('turnedOut-reading')).not.toBe(before?.get('turnedOut-reading'));
  const caster = (said: typeof before): string => said?.get('sum')?.split(' = ')[1] ?? '';
  expect(caster(after)).toBe(caster(before));
});

test('where the wheel of the figure stands does not matter', () => {
  expect(swing('camber', { steer: 25 })).toEqual(swing('camber'));
});

test('a right wheel has the readings of the left one', () => {
  for (const gauge of SWING_GAUGES) {
    const [left, right] = ['linnet, left', 'linnet, right'].map((name) =>
      words(swing(gauge, {}, name)),
    );
    expect(right).toEqual(left);
  }
});

describe.each(MODEL_NAMES)('on the %s corner', (name) => {
  test.each(SWING_GAUGES)('the words of the %s swing stay on the paper', (gauge) => {
    const { shapes, frame, description } = swing(gauge, {}, name);
    for (const shape of shapes) {
      if (shape.kind !== 'text') continue;
      const half = textWidth(shape.text) / 2;
      expect(shape.x - half, shape.text).toBeGreaterThanOrEqual(0);
      expect(shape.x + half, shape.text).toBeLessThanOrEqual(frame.width);
    }
    expect(description).toMatch(
      /^Turned in by 20° .+ By the swing the (caster|inclination) is .+\.$/,
    );
  });
});
