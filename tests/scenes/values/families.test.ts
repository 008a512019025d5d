import { expect, test } from 'vitest';
import { QUANTITIES, type QuantityId } from '#core/quantities.ts';
import { standing, valueOf } from '#scenes/corner/standing.ts';
import { AS_IT_STANDS } from '#scenes/setting.ts';
import { familyOf, isFamilyQuantity, isFamilyRatio } from '#scenes/values/families.ts';
import { TRAINING_CARS } from '../../training-cars.ts';

test('a quantity belongs to a family exactly where its value comes from one', () => {
  for (const id of Object.keys(QUANTITIES))
    expect(familyOf(id) !== undefined, id).toBe(isFamilyQuantity(id));
  expect(familyOf('clampMargin')).toBe('fastening');
  expect(familyOf('thrustFactor')).toBe('bearing');
  expect(familyOf('scrubRadius')).toBeUndefined();
  expect(isFamilyRatio('assist')).toBe(false);
});

test.each(TRAINING_CARS)('$name has a value for every quantity', ({ left }) => {
  for (const id of Object.keys(QUANTITIES) as QuantityId[])
    expect(valueOf(id, standing(left, AS_IT_STANDS)), id).not.toBeNaN();
});
