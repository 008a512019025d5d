import { describe, expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';
import { spinAxis, type Corner } from '#core/corner.ts';
import { lineThrough } from '#core/line.ts';
import { casterBySwing, swingFactor, TRADE_FACTOR } from '#core/swing-by-rule.ts';
import { readingAfter } from '#core/swing-readings.ts';
import { axisFromCamberSwing } from '#core/swing.ts';
import { vector } from '#core/vector.ts';

/**
 * One corner whose rotation by ±20° about its steering axis was run in five programs that know nothing
 * of steering: MuJoCo 3.3.8, three.js, cannon-es, the matrix exponential of mathjs, and Rodrigues'
 * formula. They agree to 3e-16.
 */
const corner: Corner = {
  side: 'left',
  axis: lineThrough(vector(0, 0.62, 0.2), vector(-0.03, 0.56, 0.75)),
  wheelCentre: vector(0, 0.7, 0.31),
  spin: spinAxis('left', 0, 0),
  loadedRadius: 0.31,
};
const source = 'rigid rotation in MuJoCo 3.3.8, three.js, cannon-es and mathjs';

describe('a left wheel rotated by 20° about its axis', () => {
  const turnedOut = readingAfter(corner, radians(20));
  const turnedIn = readingAfter(corner, radians(-20));

  const rows = [
    // Tolerance: half of the last digit given.
    {
      what: 'camber turned out',
      value: turnedOut.camber,
      degrees: 1.4326,
      tolerance: 5e-6,
      source,
    },
    {
      what: 'camber turned in',
      value: turnedIn.camber,
      degrees: -0.68962,
      tolerance: 5e-6,
      source,
    },
    {
      what: 'heading turned out',
      value: turnedOut.turn,
      degrees: 19.83159,
      tolerance: 5e-6,
      source,
    },
    {
      what: 'heading turned in',
      value: turnedIn.turn,
      degrees: -19.86971,
      tolerance: 5e-6,
      source,
    },
    {
      what: 'caster by 1/(2 sin 20°)',
      value: casterBySwing(turnedOut.camber, turnedIn.camber, swingFactor(radians(20))),
      degrees: 3.1025,
      tolerance: 5e-5,
      source: '(1.43260 + 0.68962)/(2 sin 20°) from the two cambers above',
    },
    {
      what: 'caster by the trade’s 1.5',
      value: casterBySwing(turnedOut.camber, turnedIn.camber, TRADE_FACTOR),
      degrees: 3.183,
      tolerance: 5e-4,
      source: '1.5 · (1.43260 + 0.68962), common practice, no source',
    },
  ];
  test.each(rows)('$what: $degrees°', ({ value, degrees: expected, tolerance }) => {
    expect(Math.abs(degrees(value) - expected)).toBeLessThanOrEqual(tolerance);
  });

  test('caster and inclination from the published cambers and headings alone', () => {
    const reading = (turn: number, camber: number) => ({
      turn: radians(turn),
      camber: radians(camber),
    });
    const outcome = axisFromCamberSwing({
      turnedIn: reading(-19.86971, -0.68962),
      ahead: reading(0, 0),
      turnedOut: reading(19.83159, 1.4326),
    });
    if (!outcome.ok) throw new Error('the readings are good');
    // Source: atan(0.03/0.55) and atan(0.06/0.55) from the two pivot points. Tolerance: the readings have
    // five decimals, and the inclination multiplies their error by 1/(1 − cos 20°) = 17.
    expect(Math.abs(degrees(outcome.value.caster) - 3.1221305)).toBeLessThan(2e-5);
    expect(Math.abs(degrees(outcome.value.inclination) - 6.2258291)).toBeLessThan(2e-4);
  });
});

test('the factor of the workshop formula at 20° is 1.4619', () => {
  // Source: common practice, no source; 1/(2 sin 20°) to four decimals. Tolerance: half a digit.
  expect(Math.abs(swingFactor(radians(20)) - 1.4619)).toBeLessThan(5e-5);
});
