import { describe, expect, test } from 'vitest';
import { radians } from '#core/angle.ts';
import { adjusted, AS_IT_STANDS } from '#scenes/setting.ts';
import { alignmentSheet } from '#scenes/sheet/alignment-sheet.ts';
import { sheetCell, sheetWords } from '#scenes/sheet/cell.ts';
import { cellQuantity, COLUMNS, LINE_IDS, type LineId } from '#scenes/sheet/lines.ts';
import { scaleOf } from '#scenes/sheet/scale.ts';
import { trainingCar, TRAINING_CARS } from '../../training-cars.ts';

const LINNET = trainingCar('linnet');
const CAMBER = { least: radians(-1.25), most: radians(0.25) };
const SHEETED = TRAINING_CARS.filter(({ alignment }) => alignment);

describe('the sheet of a car that is as it was set', () => {
  test.each(SHEETED)('has everything of the $name within what is allowed', (car) => {
    const { lines, changed } = alignmentSheet(car, AS_IT_STANDS);
    const outside = lines.flatMap(({ id, cells }) =>
      COLUMNS.filter((column) => cells[column].outside !== '').map((column) => `${id} ${column}`),
    );
    expect(outside).toEqual([]);
    expect(changed).toBe(false);
  });

  test('has no pale marks, since nothing has moved', () => {
    const { lines } = alignmentSheet(LINNET, AS_IT_STANDS);
    expect(lines.every(({ cells }) => cells.left.scale.before === undefined)).toBe(true);
  });

  test('says beside each line what is allowed', () => {
    const { lines } = alignmentSheet(LINNET, AS_IT_STANDS);
    expect(lines[0]).toMatchObject({ name: 'camber', limits: '−1.25° to 0.25°' });
    expect(lines[0]).toMatchObject({ plus: 'outboard', difference: '±0.50°' });
    expect(lines.at(-1)).toMatchObject({ name: 'toe', plus: 'toe-in', difference: '' });
  });
});

test('a car that says nothing of its alignment has no sheet', () => {
  const bare = { ...LINNET, alignment: undefined };
  expect(() => alignmentSheet(bare, AS_IT_STANDS)).toThrow(/says nothing of its alignment/);
});

test('pale marks stay where the car was set while the wheel leans', () => {
  const leaning = alignmentSheet(LINNET, adjusted(AS_IT_STANDS, { camberAtCarrier: 1 }));
  const [camber] = leaning.lines;
  const [set] = alignmentSheet(LINNET, AS_IT_STANDS).lines;
  expect(camber?.cells.left.scale.before).toBe(set?.cells.left.scale.mark);
  expect(camber?.cells.left.scale.mark).toBeGreaterThan(set?.cells.left.scale.mark ?? NaN);
});

test('a prediction stands in the left column of its own line and nowhere else', () => {
  const guesses = { camber: radians(-1), scrubRadius: 0.01 };
  const { lines, guessed } = alignmentSheet(LINNET, AS_IT_STANDS, guesses);
  const marked = lines.flatMap(({ id, cells }) =>
    COLUMNS.filter((column) => cells[column].scale.guess !== undefined).map((c) => [id, c]),
  );
  expect(guessed).toBe(true);
  expect(marked).toEqual([['camber', 'left']]);
});

test('a guess about something else is no mark on the sheet', () => {
  expect(alignmentSheet(LINNET, AS_IT_STANDS, { scrubRadius: 0.01 }).guessed).toBe(false);
});

describe('a cell', () => {
  const { alignment } = LINNET;
  if (!alignment) throw new Error('the Linnet has bands');
  const camber = (value_deg: number) =>
    sheetCell('camber', 'left', alignment, radians(value_deg), {});

  test.each([
    [-1.25, ''],
    [0.25, ''],
    [-1.254, ''],
    [-1.26, '0.01°'],
    [0.9, '0.65°'],
    [-2, '0.75°'],
  ])('with a camber of %f° is past the band by “%s”', (value, outside) => {
    expect(camber(value).outside).toBe(outside);
  });

  test('says its value, its direction and its band for whoever cannot see the scale', () => {
    expect(camber(-0.5).words).toBe('0.50° inboard, within −1.25° to 0.25°');
    expect(camber(0.9).words).toBe('0.90° outboard, outside −1.25° to 0.25° by 0.65°');
  });

  test('of the pair says which side has more, and of toe what both have together', () => {
    const pair = (id: LineId, value_deg: number): string =>
      sheetCell(id, 'pair', alignment, radians(value_deg), {}).words;
    expect(pair('caster', -0.7)).toMatch(/^0\.70° more on the right, outside/);
    expect(pair('toe', 0.2)).toBe('0.20° toe-in, within 0.00° to 0.40°');
  });
});

test.each(LINE_IDS)('nought of %s has no direction', (id) => {
  expect(sheetWords(0.00001, cellQuantity(id, 'left'))).toBe('0.00°');
});

describe('a scale', () => {
  test('has its band in the middle', () => {
    const { from, to } = scaleOf(CAMBER, 0);
    expect(from + to).toBeCloseTo(100, 9);
    expect(to).toBeGreaterThan(from);
  });

  test('has the ends of the band where the band ends', () => {
    expect(scaleOf(CAMBER, CAMBER.least).mark).toBe(scaleOf(CAMBER, 0).from);
    expect(scaleOf(CAMBER, CAMBER.most).mark).toBe(scaleOf(CAMBER, 0).to);
  });

  test.each([
    [-9, 'below'],
    [-0.5, undefined],
    [9, 'above'],
  ] as const)('has %f° %s its ends', (value, beyond) => {
    const scale = scaleOf(CAMBER, radians(value));
    expect(scale.beyond).toBe(beyond);
    expect(scale.mark).toBeGreaterThan(0);
    expect(scale.mark).toBeLessThan(100);
  });
});
