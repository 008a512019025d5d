import { n, type Numbers, type Step, tan, was } from './sums.ts';

const outer = (item: Numbers): boolean => (item['which'] as unknown) === 'outer';

/** The side force on a wheel in a turn, toward the car positive. */
const pushedIn = (item: Numbers): number => (outer(item) ? 1 : -1) * n(item, 'side_N');

/** X and Y of ISO 281:2007, Table 3, single row, by contact angle in degrees (from memory). */
const TABLED: Readonly<Record<number, readonly [number, number]>> = {
  25: [0.41, 0.87],
  30: [0.39, 0.76],
  35: [0.37, 0.66],
  40: [0.35, 0.57],
};

const factorY = (item: Numbers): number => TABLED[n(item, 'angle_deg')]?.[1] ?? NaN;

/** The exponent of the life equation of what rolls in the row. */
const power = (item: Numbers): number => ((item['kind'] as unknown) === 'ball' ? 3 : 10 / 3);

/**
 * The bearing: a beam on two supports, whose slanting contact lines push along it; the life equation.
 *
 * Source: plane statics (relations from memory); ISO 281:2007 for factors and lives (from memory).
 */
export const BEARING: Readonly<Record<string, readonly Step[]>> = {
  'pressure-centre-spread': [
    (item) => (n(item, 'diameter_mm') / 2) * tan(n(item, 'angle_deg')),
    (item, before) => n(item, 'pitch_mm') + 2 * was(before, 0),
  ],
  'row-loads': [
    (item) => n(item, 'spread_mm') / 2 + n(item, 'offset_mm'),
    (item, before) => (n(item, 'load_N') * was(before, 0)) / n(item, 'spread_mm'),
    (item, before) => n(item, 'load_N') - was(before, 1),
  ],
  'spacer-row-loads': [
    (item) => n(item, 'offset_mm') + n(item, 'spacer_mm'),
    (item, before) => n(item, 'load_N') * (1 / 2 + was(before, 0) / n(item, 'spread_mm')),
    (item, before) => n(item, 'load_N') - was(before, 1),
  ],
  'spacer-for-row-load': [
    (item) => n(item, 'load_N') - n(item, 'inboard_N'),
    (item, before) => n(item, 'spread_mm') * (was(before, 0) / n(item, 'load_N') - 1 / 2),
    (item, before) => was(before, 1) - n(item, 'offset_mm'),
  ],
  'tilt-in-a-turn': [
    (item) => (-pushedIn(item) * n(item, 'radius_mm')) / 1000,
    (item) => (n(item, 'load_N') * n(item, 'offset_mm')) / 1000,
    (_item, before) => was(before, 0) + was(before, 1),
  ],
  'row-loads-in-a-turn': [
    (item) =>
      (n(item, 'load_N') * n(item, 'offset_mm') - pushedIn(item) * n(item, 'radius_mm')) / 1000,
    (item, before) => (1000 * was(before, 0)) / n(item, 'spread_mm'),
    (item, before) => n(item, 'load_N') / 2 + was(before, 1),
    (item, before) => n(item, 'load_N') - was(before, 2),
  ],
  'thrust-through-rows': [
    (item) => n(item, outer(item) ? 'inboard_N' : 'outboard_N') / (2 * factorY(item)),
    (item, before) => was(before, 0) + n(item, 'side_N'),
    (item, before) => was(before, 1) - n(item, 'side_N'),
  ],
  'side-force-that-empties': [
    (item) => n(item, 'spread_mm') / 2 + (outer(item) ? 1 : -1) * n(item, 'offset_mm'),
    (item, before) => (n(item, 'load_N') * was(before, 0)) / 1000,
    (item, before) => ((outer(item) ? 1000 : -1000) * was(before, 1)) / n(item, 'radius_mm'),
  ],
  'life-from-load': [
    (item) => {
      const [x, y] = TABLED[n(item, 'contactAngle_deg')] ?? [];
      return (x ?? NaN) * n(item, 'radial_N') + (y ?? NaN) * n(item, 'thrust_N');
    },
    (item, before) => (1000 * n(item, 'rating_kN')) / was(before, 0),
    (_item, before) => was(before, 1) ** 3,
    (item, before) => was(before, 2) * 1000 * 2 * Math.PI * (n(item, 'radius_mm') / 1000),
  ],
  'life-left': [
    (item) => n(item, 'after_N') / n(item, 'before_N'),
    (item, before) => 100 / was(before, 0) ** power(item),
    (item, before) => (n(item, 'way_km') * was(before, 1)) / 100,
  ],
  'duty-cycle-life': [
    (item) => {
      const [outside, inside] = [n(item, 'outside_percent'), n(item, 'inside_percent')];
      const cubes =
        outside * n(item, 'outside_N') ** 3 +
        inside * n(item, 'inside_N') ** 3 +
        (100 - outside - inside) * n(item, 'straight_N') ** 3;
      return Math.cbrt(cubes / 100);
    },
    (item, before) => ((1000 * n(item, 'rating_kN')) / was(before, 0)) ** 3,
  ],
  'two-rows-life': [
    (item) => ((1000 * n(item, 'rating_kN')) / n(item, 'outboard_N')) ** power(item),
    (item) => ((1000 * n(item, 'rating_kN')) / n(item, 'inboard_N')) ** power(item),
    (item, before) => {
      const w = power(item) === 3 ? 10 / 9 : 9 / 8;
      return (1 / (was(before, 0) ** -w + was(before, 1) ** -w)) ** (1 / w);
    },
  ],
  'spacer-row-life': [
    (item) => n(item, 'load_N') * (1 / 2 + n(item, 'offset_mm') / n(item, 'spread_mm')),
    (item, before) =>
      was(before, 0) + (n(item, 'load_N') * n(item, 'spacer_mm')) / n(item, 'spread_mm'),
    (_item, before) => 100 * (was(before, 0) / was(before, 1)) ** 3,
  ],
  'load-for-life': [
    (item) => (1000 * n(item, 'way_km')) / (Math.PI * 2 * (n(item, 'radius_mm') / 1000)) / 1e6,
    (item, before) => was(before, 0) ** (1 / power(item)),
    (item, before) => (1000 * n(item, 'rating_kN')) / was(before, 1),
  ],
};
