import { describe, expect, test } from 'vitest';
import type { Mark } from '#scenes/marks.ts';
import { drawn, type Drawing } from '#scenes/paper/drawn.ts';
import { point } from '#scenes/plane.ts';

/** One unit of paper for each millimetre; the middle of the paper is at (0, 0). */
const draw = (...marks: readonly Mark[]): Drawing =>
  drawn({
    title: 'Left front corner',
    description: 'The left front corner.',
    window: { centre: point(0, 0), height: 300 },
    marks,
  });

const dimension = (length: number): Mark => ({
  kind: 'dimension',
  key: 'scrubRadius',
  role: 'guide',
  quantity: 'scrubRadius',
  from: point(0, 0),
  to: point(length, 0),
  fromFoot: point(0, -36),
  toFoot: point(length, -36),
  text: 'scrub radius',
});

const spacerHandle = (across: number): Mark => ({
  kind: 'handle',
  key: 'handle-spacer',
  role: 'guide',
  parameter: 'spacer',
  moves: 'across',
  at: point(across, 0),
});

function pathOf({ shapes }: Drawing, key: string): string {
  const shape = shapes.find((one) => one.key === key);
  return shape?.kind === 'path' ? shape.d : '';
}

describe('a dimension', () => {
  test('has extension lines that keep off the points and pass the dimension line', () => {
    expect(pathOf(draw(dimension(80)), 'scrubRadius')).toBe(
      'M200 152L200 191M280 152L280 191M200 186L280 186',
    );
  });

  test('has heads that point outward at its feet', () => {
    expect(pathOf(draw(dimension(80)), 'scrubRadius-heads')).toMatch(
      /^M200 186L208 .*M280 186L272 /,
    );
  });

  test('has heads that point inward from outside where it is short', () => {
    expect(pathOf(draw(dimension(12)), 'scrubRadius-heads')).toMatch(
      /^M200 186L192 .*M212 186L220 /,
    );
  });

  test('says its value in words that stand out', () => {
    const [text] = draw(dimension(80)).shapes.filter((shape) => shape.kind === 'text');
    expect(text).toMatchObject({ text: 'scrub radius', strong: true, quantity: 'scrubRadius' });
  });
});

describe('an angle', () => {
  const angle = (across: number): Mark => ({
    kind: 'angle',
    key: 'inclination',
    role: 'guide',
    vertex: point(0, 0),
    towards: point(across, 80),
    text: 'inclination',
  });

  test('is an arc from straight up to its direction, clockwise or not', () => {
    expect(pathOf(draw(angle(60)), 'inclination')).toBe(
      'M200 150L200 44M200 58A92 92 0 0 1 255.2 76.4',
    );
    expect(pathOf(draw(angle(-60)), 'inclination')).toContain('A92 92 0 0 0 144.8 76.4');
  });
});

test('the road is a level line from edge to edge, hatched below', () => {
  const drawing = draw({ kind: 'ground', key: 'ground', role: 'ground', up: -50 });
  expect(pathOf(drawing, 'ground')).toBe('M0 200H400');
  expect(pathOf(drawing, 'ground-hatch')).toMatch(/^M12 200l-7 7M24 200/);
});

test('a spot is a dot, and a pivot has a ring round it', () => {
  const spot = { kind: 'spot', role: 'axis', at: point(0, 0) } as const;
  const keys = draw({ ...spot, key: 'a' }, { ...spot, key: 'b', ringed: true }).shapes.map(
    ({ key }) => key,
  );
  expect(keys).toEqual(['a', 'b-ring', 'b']);
});

test('an arrow ends with its head at the place that it points to', () => {
  const arrow = {
    kind: 'arrow',
    key: 'f',
    role: 'force',
    from: point(0, 0),
    to: point(50, 0),
  } as const;
  const drawing = draw(arrow);
  expect(pathOf(drawing, 'f')).toBe('M200 150L240 150');
  expect(pathOf(drawing, 'f-head')).toMatch(/^M250 150L237 /);
});

describe('what is off the paper', () => {
  test('has no words: they would name something else', () => {
    const label = (up: number): Mark => ({
      kind: 'label',
      key: 'name-upper',
      role: 'axis',
      at: point(0, up),
      text: 'upper pivot',
    });
    expect(draw(label(149)).shapes.length).toBe(1);
    expect(draw(label(151)).shapes).toEqual([]);
  });

  test('cannot be grabbed, nor can what is half on it', () => {
    expect(draw(spacerHandle(100)).grips).toMatchObject([{ x: 300, y: 150 }]);
    expect(draw(spacerHandle(190)).grips).toEqual([]);
    expect(draw(spacerHandle(300)).grips).toEqual([]);
  });
});

test('words keep off a grip and its arrows', () => {
  const name: Mark = {
    kind: 'label',
    key: 'n',
    role: 'wheel',
    at: point(0, 0),
    text: 'wheel centre',
  };
  const [free] = draw(name).shapes;
  const [beside] = draw(name, spacerHandle(0)).shapes;
  expect(free).toMatchObject({ y: 150 });
  expect(beside).not.toMatchObject({ y: 150 });
});

test('values have their seats before names, and both are painted over everything', () => {
  const name: Mark = {
    kind: 'label',
    key: 'n',
    role: 'wheel',
    at: point(40, -36),
    text: 'wheel centre',
  };
  const alone = draw(dimension(80)).shapes.find((shape) => shape.kind === 'text');
  const { shapes } = draw(name, dimension(80));
  expect(shapes.find(({ key }) => key === 'scrubRadius-text')).toEqual(alone);
  expect(shapes.slice(-2).map(({ kind }) => kind)).toEqual(['text', 'text']);
});

test('a drawing keeps the scene’s title and description', () => {
  expect(draw()).toMatchObject({
    title: 'Left front corner',
    description: 'The left front corner.',
    shapes: [],
    grips: [],
  });
});
