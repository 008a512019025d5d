import { expect, test } from 'vitest';
import { benchOfTrainingCar } from '#core/judgement/start.ts';
import { adjusted, AS_IT_STANDS } from '#scenes/setting.ts';
import { speedOnOtherTyre } from '#exercises/kinds/speed-on-other-tyre.ts';
import { scrubOtherTyre } from '#exercises/kinds/scrub-other-tyre.ts';
import { askedIn } from '../../../src/lib/bench/asked.ts';
import { carQuery } from '../../../src/lib/bench/car-query.ts';
import { carriedWords } from '../../../src/lib/bench/carried.ts';
import { settingOfItem } from '../../../src/lib/bench/item-setting.ts';
import { valueOf } from '../../core/example-corner.ts';
import { CAR_FILES } from '../../training-cars.ts';

const LINNET = [
  { id: 'linnet', document: valueOf(benchOfTrainingCar(CAR_FILES.get('linnet.json'))) },
];

function variantOf(search: string) {
  const asked = askedIn({ hash: '', search }, LINNET);
  if (asked === undefined) throw new Error('nothing asked for');
  const [variant] = valueOf(asked).variants;
  return variant;
}

test('a figure’s larger tyre comes to the bench as the nearest marked size', () => {
  // Worked by hand: 195/65 R15 is 634.5 mm across and 195/70 R15 is 654.0 mm, 3.1 % more; 9 mm of a loaded radius near 300 mm are 3 %.
  const variant = variantOf(carQuery('linnet', adjusted(AS_IT_STANDS, { radius: 9 })));
  expect(variant).toEqual({
    name: 'As in the figure, with the nearest size of tyre',
    both: { tyre: '195/70 R15' },
  });
});

test('a tyre that is hardly larger has no size of its own, and the change says so', () => {
  const variant = variantOf(carQuery('linnet', adjusted(AS_IT_STANDS, { radius: 1, spacer: 10 })));
  expect(variant).toEqual({
    name: 'As in the figure, but for the tyre: no size is so near',
    both: { spacer_mm: 10 },
  });
});

test('exercises with other tyres take them along, by radius or by the sizes that they name', () => {
  const radii = { radius_mm: 300, newRadius_mm: 312 };
  expect(settingOfItem(scrubOtherTyre.id, radii).radius).toBe(12);
  // Worked by hand: 205/55 R16 is 631.9 mm across, 225/50 R17 is 656.8 mm: half of 24.9 mm, to a tenth.
  const sizes = {
    oldWidth: 205,
    oldAspect: 55,
    oldRim: 16,
    newWidth: 225,
    newAspect: 50,
    newRim: 17,
  };
  expect(settingOfItem(speedOnOtherTyre.id, sizes).radius).toBe(12.5);
});

test('a link to the bench says what it takes along and what it leaves', () => {
  expect(carriedWords(AS_IT_STANDS)).toBe('');
  expect(carriedWords(adjusted(AS_IT_STANDS, { steer: 10, brake: 1000 }))).toBe('');
  expect(carriedWords(adjusted(AS_IT_STANDS, { radius: 10 }))).toBe(
    ', with the same change, its tyre as the marked size that comes nearest',
  );
  expect(carriedWords(adjusted(AS_IT_STANDS, { upperInboard: 10 }))).toBe(
    '; what the bench has no field for stays here: upper pivot, across',
  );
});
