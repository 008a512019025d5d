import { expect, test } from 'vitest';
import { systemExponent, systemLife } from '#core/bearing/system-life.ts';

test('one row alone is its own system', () => {
  expect(systemLife([{ kind: 'ball', life: 500 }])).toBeCloseTo(500, 9);
});

test('a row that lives for ever leaves the system its partner’s life', () => {
  expect(
    systemLife([
      { kind: 'roller', life: Infinity },
      { kind: 'roller', life: 300 },
    ]),
  ).toBeCloseTo(300, 9);
});

test('rows without load make a system without end', () => {
  expect(
    systemLife([
      { kind: 'ball', life: Infinity },
      { kind: 'ball', life: Infinity },
    ]),
  ).toBe(Infinity);
});

test('a hub of balls and rollers is rated like balls, which gives the shorter life', () => {
  expect(systemExponent(['ball', 'roller'])).toBe(10 / 9);
  expect(systemExponent(['roller', 'roller'])).toBe(9 / 8);
  const mixed = systemLife([
    { kind: 'ball', life: 500 },
    { kind: 'roller', life: 500 },
  ]);
  const rollers = systemLife([
    { kind: 'roller', life: 500 },
    { kind: 'roller', life: 500 },
  ]);
  expect(mixed).toBeLessThan(rollers);
});
