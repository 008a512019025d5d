import { expect, test } from 'vitest';
import { numberText, valueText } from '#core/display.ts';

test('a rating life is shown in whole millions of revolutions, a share in tenths of a per cent', () => {
  expect(valueText(127.08e6, 'life')).toBe('127\u202fMrev');
  expect(valueText(0.125, 'share')).toBe('12.5\u202f%');
});

test('a way of a life is shown in whole thousands, in groups that can be read, and no closer', () => {
  expect(valueText(246_015_800, 'distance')).toBe('246\u202f000\u202fkm');
  expect(valueText(2_606_499_000, 'distance')).toBe('2\u202f606\u202f000\u202fkm');
  expect(numberText(246_015_800, 'distance', 'us')).toBe('153\u202f000');
  expect(numberText(400_000, 'distance')).toBe('0');
});
