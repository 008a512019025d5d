import { describe, expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';
import { spinAxis, type Corner } from '#core/corner.ts';
import { lineThrough } from '#core/line.ts';
import {
  casterBySwing,
  inclinationBySwing,
  swingFactor,
  TRADE_FACTOR,
} from '#core/swing-by-rule.ts';
import { swingReadings } from '#core/swing-readings.ts';
import { axisFromBrakedSwing, axisFromCamberSwing } from '#core/swing.ts';
import { vector } from '#core/vector.ts';

const cornerWithAxisTo = (x: number, y: number): Corner => ({
  side: 'left',
  axis: lineThrough(vector(0, 0.65, 0.2), vector(x, y, 0.6)),
  wheelCentre: vector(0, 0.72, 0.3),
  spin: spinAxis('left', 0, 0),
  loadedRadius: 0.3,
});

describe('what the gauges show', () => {
  test('caster alone: camber when turned out, as much less when turned in', () => {
    const { turnedIn, turnedOut } = swingReadings(cornerWithAxisTo(-0.03, 0.65), radians(20));
    expect(turnedOut.camber).toBeGreaterThan(0);
    expect(turnedIn.camber).toBeCloseTo(-turnedOut.camber, 14);
  });

  test('inclination alone: camber both ways, and the front edge of the braked wheel rises turned out', () => {
    const { turnedIn, turnedOut } = swingReadings(cornerWithAxisTo(0, 0.58), radians(20));
    expect(turnedOut.camber).toBeGreaterThan(0);
    expect(turnedIn.camber).toBeCloseTo(turnedOut.camber, 14);
    expect(turnedOut.pitch).toBeGreaterThan(0);
    expect(turnedIn.pitch).toBeCloseTo(-turnedOut.pitch, 14);
  });

  test('an upright axis: nothing', () => {
    const { turnedIn, turnedOut } = swingReadings(cornerWithAxisTo(0, 0.65), radians(20));
    for (const { camber, pitch } of [turnedIn, turnedOut]) {
      expect(camber).toBeCloseTo(0, 15);
      expect(pitch).toBeCloseTo(0, 15);
    }
  });

  test('straight ahead with toe-in the wheel is turned in by the toe', () => {
    const corner = { ...cornerWithAxisTo(-0.03, 0.6), spin: spinAxis('left', 0, radians(0.5)) };
    expect(degrees(swingReadings(corner, radians(20)).ahead.turn)).toBeCloseTo(-0.5, 12);
  });
});

describe('the workshop formulas', () => {
  test('take the difference of the two readings times the factor, in whatever unit they are', () => {
    expect(casterBySwing(1.4, -0.6, TRADE_FACTOR)).toBeCloseTo(3, 12);
    expect(inclinationBySwing(2, -2.2, TRADE_FACTOR)).toBeCloseTo(6.3, 12);
  });

  test('have the factor 1 at 30°', () => {
    expect(swingFactor(radians(30))).toBeCloseTo(1, 14);
  });

  test.each([0, -0.1, Math.PI, NaN])('have no factor for a swing of %d rad', (turn) => {
    expect(() => swingFactor(turn)).toThrow(RangeError);
  });
});

describe('readings that cannot be', () => {
  const reading = (turn: number, camber = 0, pitch = 0) => ({
    turn: radians(turn),
    camber: radians(camber),
    pitch: radians(pitch),
  });
  const good = { turnedIn: reading(-20, -1, -2), ahead: reading(0), turnedOut: reading(20, 1, 2) };

  test('good ones pass', () => {
    expect(axisFromCamberSwing(good).ok).toBe(true);
    expect(axisFromBrakedSwing(good).ok).toBe(true);
  });

  test('the wheel turned the wrong way', () => {
    const swapped = { ...good, turnedIn: good.turnedOut, turnedOut: good.turnedIn };
    expect(axisFromCamberSwing(swapped)).toEqual({
      ok: false,
      faults: [
        {
          path: 'turnedIn.turn',
          wrong: 'is −20.00° in from straight ahead',
          allowed: 'at least 2° in from straight ahead',
        },
        {
          path: 'turnedOut.turn',
          wrong: 'is −20.00° out from straight ahead',
          allowed: 'at least 2° out from straight ahead',
        },
      ],
    });
  });

  test.each([
    ['turned too far', { ...good, turnedOut: reading(61) }, 'turnedOut.turn'],
    ['hardly turned', { ...good, turnedIn: reading(-1.5) }, 'turnedIn.turn'],
    ['a camber like a motorcycle', { ...good, ahead: reading(0, 31) }, 'ahead.camber'],
    ['a turn that is no number', { ...good, ahead: reading(NaN) }, 'ahead.turn'],
    ['a camber that is no number', { ...good, turnedIn: reading(-20, NaN) }, 'turnedIn.camber'],
  ])('%s', (_, swing, path) => {
    const outcome = axisFromCamberSwing(swing);
    expect(outcome.ok ? [] : outcome.faults.map((fault) => fault.path)).toEqual([path]);
  });

  test('a pitch out of bounds matters only with the brake applied', () => {
    const swing = { ...good, turnedOut: reading(20, 1, 31) };
    expect(axisFromCamberSwing(swing).ok).toBe(true);
    expect(axisFromBrakedSwing(swing)).toMatchObject({
      ok: false,
      faults: [{ path: 'turnedOut.pitch', wrong: 'is 31.00°' }],
    });
  });

  test('readings that no upright axis gives', () => {
    const wild = { turnedIn: reading(-3, -30), ahead: reading(0), turnedOut: reading(3, 30) };
    expect(axisFromCamberSwing(wild)).toMatchObject({
      ok: false,
      faults: [{ path: '', wrong: 'fit no steering axis within 60° of upright' }],
    });
  });
});
