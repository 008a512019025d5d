import { expect, test } from 'vitest';
import { designation } from '#core/tyre/designation.ts';
import { nearestSize } from '#core/tyre/nearest-size.ts';
import { parseTyre } from '#core/tyre/parse-tyre.ts';
import { valueOf } from '../example-corner.ts';

const nearest = (size: string, growth: number): string =>
  designation(nearestSize(valueOf(parseTyre(size)), growth));

// Worked by hand: rim 25.4 mm an inch, and twice the width times the aspect ratio.
test('a tyre as much larger as the next aspect ratio is that size, on the same rim', () => {
  // 195/65 R15 is 634.5 mm across, 195/70 R15 is 654.0 mm, 195/60 R15 is 615.0 mm.
  expect(nearest('195/65 R15 91H', 654 / 634.5)).toBe('195/70 R15');
  expect(nearest('195/65 R15 91H', 615 / 634.5)).toBe('195/60 R15');
  // 225/45 R17 is 634.3 mm, 225/50 R17 is 656.8 mm.
  expect(nearest('225/45 R17 91W', 656.8 / 634.3)).toBe('225/50 R17');
});

test('between two aspect ratios another width may come nearer', () => {
  // 644 mm is asked for: 195/65 is 9.5 mm off and 195/70 10 mm, 205/65 R15 at 647.5 mm only 3.5 mm.
  expect(nearest('195/65 R15 91H', 644 / 634.5)).toBe('205/65 R15');
});

test('where no size comes nearer it is the tyre itself, with what it carries', () => {
  expect(nearest('195/65 R15 91H', 1)).toBe('195/65 R15 91H');
  expect(nearest('195/65 R15 91H', 635 / 634.5)).toBe('195/65 R15 91H');
});

test('a flotation size grows by whole inches', () => {
  expect(nearest('31x10.50 R15 LT 109Q', 33 / 31)).toBe('33x10.50 R15 LT');
});
