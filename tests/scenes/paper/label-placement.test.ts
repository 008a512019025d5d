import { describe, expect, test } from 'vitest';
import { leader, seated, textWidth, type Seat, type Wish } from '#scenes/paper/label-placement.ts';

const PAPER = { width: 400, height: 300 };

const wish = (key: string, x: number, y: number, text = 'contact centre'): Wish => ({
  key,
  at: { x, y },
  text,
  clearance: 6,
});

function seat(seats: ReadonlyMap<string, Seat>, key: string): Seat {
  const found = seats.get(key);
  if (!found) throw new Error(`${key} has no seat`);
  return found;
}

describe('words', () => {
  test('stand close to the right of their place where nothing is in the way', () => {
    const { x, y, halfWidth } = seat(seated([wish('a', 100, 150)], [], PAPER), 'a');
    expect(y).toBe(150);
    expect(x - halfWidth).toBeGreaterThan(100);
    expect(x - halfWidth).toBeLessThan(115);
  });

  test('go to the left at the right edge, and above at the bottom', () => {
    expect(seat(seated([wish('a', 390, 150)], [], PAPER), 'a').x).toBeLessThan(390);
    expect(seat(seated([wish('a', 200, 299)], [], PAPER), 'a').y).toBeLessThan(299);
  });

  test('keep off a stroke that matters, and lie on it where there is no other seat', () => {
    const right = { from: { x: 100, y: 150 }, to: { x: 300, y: 150 }, weight: 5 };
    expect(seat(seated([wish('a', 100, 150)], [right], PAPER), 'a').y).not.toBe(150);
    const everywhere = Array.from({ length: 60 }, (_, i) => ({
      from: { x: 0, y: 5 * i },
      to: { x: 400, y: 5 * i },
      weight: 5,
    }));
    expect(seat(seated([wish('a', 100, 150)], everywhere, PAPER), 'a').y).toBe(150);
  });

  test('are as wide as their letters need', () => {
    expect(textWidth('mm')).toBeGreaterThan(2 * 6);
    expect(textWidth('contact centre')).toBeGreaterThan(textWidth('contact'));
  });
});

describe('the line from words to their place', () => {
  const place = wish('a', 100, 150);

  test('is not drawn where they stand beside it', () => {
    expect(leader({ x: 160, y: 150, halfWidth: 45 }, place)).toBeUndefined();
  });

  test('runs from the edge of words that stand far off, and ends short of the place', () => {
    expect(leader({ x: 200, y: 150, halfWidth: 45 }, place)).toMatchObject({
      from: { x: 155, y: 150 },
      to: { x: 106, y: 150 },
    });
    expect(leader({ x: 110, y: 250, halfWidth: 45 }, place)?.from.x).toBe(100);
  });
});

describe('words of one place', () => {
  test('do not lie on one another: the first has the first seat', () => {
    const crowd = ['a', 'b', 'c', 'd', 'e', 'f'].map((key) => wish(key, 200, 150));
    const seats = seated(crowd, [], PAPER);
    expect(seat(seats, 'a').x).toBeGreaterThan(200);
    for (const [i, one] of crowd.entries()) {
      for (const other of crowd.slice(i + 1)) {
        const [a, b] = [seat(seats, one.key), seat(seats, other.key)];
        const apart = Math.max(
          Math.abs(a.x - b.x) - a.halfWidth - b.halfWidth,
          Math.abs(a.y - b.y) - 16,
        );
        expect(apart, `${one.key} and ${other.key}`).toBeGreaterThan(0);
      }
    }
  });
});
