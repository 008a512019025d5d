import { describe, expect, test } from 'vitest';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import type { Arrow } from '#scenes/marks.ts';
import { estimatesDrawing } from '#scenes/parking/estimates-drawing.ts';
import type { ParkingLook } from '#scenes/parking/parking-look.ts';
import { parkingNumbers } from '#scenes/parking/parking-numbers.ts';
import { parkingScene } from '#scenes/parking/parking-scene.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { trainingCar } from '../../training-cars.ts';

const { left } = trainingCar('pelican');
const LOOK: ParkingLook = { width_mm: 172, surface: 'dry', held: true, units: 'metric' };

const loaded = (changes: Partial<Setting> = {}): Setting =>
  adjusted(AS_IT_STANDS, { weight: 4500, ...changes });
const numbers = (changes: Partial<Setting> = {}, look: Partial<ParkingLook> = {}) =>
  parkingNumbers(standing(left, loaded(changes)), loaded(changes), { ...LOOK, ...look });
const arrows = (
  changes: Partial<Setting> = {},
  look: Partial<ParkingLook> = {},
): readonly Arrow[] =>
  parkingScene(left, loaded(changes), { ...LOOK, ...look }).marks.filter(
    (mark): mark is Arrow => mark.kind === 'arrow',
  );

describe('the estimates of a standing wheel', () => {
  test('are those of the prose with the car’s own print on dry concrete, the brake held', () => {
    const now = standing(left, loaded());
    const width_mm = 1000 * now.printWidth;
    const shown = parkingNumbers(now, loaded(), { ...LOOK, width_mm });
    for (const id of ['parkingByGyration', 'parkingByThirds', 'parkingByPressure'] as const) {
      expect(shown[id]).toBeCloseTo(valueOf(id, now), 9);
    }
  });

  test('grow with the scrub radius while the brake is held, and not while the wheel rolls', () => {
    expect(numbers({ spacer: 40 }).parkingByThirds).toBeGreaterThan(numbers().parkingByThirds);
    const rolling = { held: false };
    expect(numbers({ spacer: 40 }, rolling)).toEqual(numbers({}, rolling));
  });

  test('go with the friction', () => {
    const { parkingByThirds } = numbers({}, { surface: 'ice' });
    expect(parkingByThirds).toBeCloseTo(numbers().parkingByThirds / 7, 9);
  });

  test('agree with the mean distance from the middle, summed over a round print', () => {
    // By hand: bits of a round print of even pressure, each as far from the middle as it is.
    let [sum, count] = [0, 0];
    for (let x = -1; x <= 1; x += 0.004) {
      for (let y = -1; y <= 1; y += 0.004) {
        const away = Math.hypot(x, y);
        if (away > 1) continue;
        sum += away;
        count += 1;
      }
    }
    const mean = ((sum / count) * LOOK.width_mm) / 2000;
    const byHand = 0.7 * 4500 * mean;
    expect(Math.abs(numbers({}, { held: false }).parkingByThirds / byHand - 1)).toBeLessThan(0.005);
  });
});

describe('the friction of the road', () => {
  test('turns the wheel back about the point that it is turned about, everywhere as large', () => {
    for (const held of [true, false]) {
      const { marks } = parkingScene(left, loaded({ spacer: 20 }), { ...LOOK, held });
      const pole = marks.find(({ key }) => key === (held ? 'ground-point' : 'contact-centre'));
      if (pole?.kind !== 'spot') throw new Error('no pole');
      for (const { from, to } of arrows({ spacer: 20 }, { held })) {
        const [dx, dy] = [to.across - from.across, to.up - from.up];
        const [px, py] = [
          (from.across + to.across) / 2 - pole.at.across,
          (from.up + to.up) / 2 - pole.at.up,
        ];
        expect(px * dx + py * dy).toBeCloseTo(0, 6);
        expect(px * dy - py * dx).toBeLessThan(0);
        expect(Math.hypot(dx, dy)).toBeCloseTo(30, 6);
      }
    }
  });

  test('is told in words, held and rolling', () => {
    const said = (held: boolean) => parkingScene(left, loaded(), { ...LOOK, held }).description;
    expect(said(true)).toContain('dragged round the point where the axis meets the road');
    expect(said(false)).toContain('twists about its own middle');
    expect(said(true)).toContain('the axis meets the road inboard of the contact centre');
  });
});

test('the bars are as long as their values, on one scale', () => {
  const now = standing(left, loaded());
  const { shapes, description } = estimatesDrawing(now, loaded(), LOOK);
  const length = (id: string): number => {
    const bar = shapes.find(({ key }) => key === `bar-${id}`);
    return Number(/h(-?[\d.]+)v/.exec(bar?.kind === 'path' ? bar.d : '')?.[1]);
  };
  const { parkingByGyration, parkingByThirds } = numbers();
  expect(length('parkingByGyration') / length('parkingByThirds')).toBeCloseTo(
    parkingByGyration / parkingByThirds,
    3,
  );
  expect(description).toContain('none is exact');
});
