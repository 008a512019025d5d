import { describe, expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';
import { asRead } from '#core/swing-as-read.ts';

const reading = (turn: number, camber: number, pitch: number) => ({
  turn: radians(turn),
  camber: radians(camber),
  pitch: radians(pitch),
});
const swing = {
  turnedIn: reading(-20, -2.375, -3.662),
  ahead: reading(-0.1, -0.8, 0),
  turnedOut: reading(20, 1.948, 2.909),
};

describe('a gauge with tenths of a degree', () => {
  const { turnedIn, ahead, turnedOut } = asRead(swing, radians(0.1));

  test('shows camber and pitch to the nearest tenth', () => {
    expect(degrees(turnedIn.camber)).toBeCloseTo(-2.4, 12);
    expect(degrees(turnedIn.pitch)).toBeCloseTo(-3.7, 12);
    expect(degrees(turnedOut.camber)).toBeCloseTo(1.9, 12);
    expect(degrees(turnedOut.pitch)).toBeCloseTo(2.9, 12);
  });

  test('leaves the turn as it was set', () => {
    expect(ahead.turn).toBe(radians(-0.1));
  });
});

test.each([0, -0.1, NaN])('no gauge has a division of %d rad', (division) => {
  expect(() => asRead(swing, division)).toThrow(RangeError);
});
