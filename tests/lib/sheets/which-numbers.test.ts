import { expect, test } from 'vitest';
import { faultsOf } from '#core/fault.ts';
import { numbersIn } from '../../../src/lib/sheets/which-numbers.ts';
import { valueOf } from '../../core/example-corner.ts';

test.each([
  ['1-3', [1, 2, 3]],
  ['12, 7; 3 7', [3, 7, 12]],
  [' 5–6 ,9', [5, 6, 9]],
])('%j are the numbers %j', (text, numbers) => {
  expect(valueOf(numbersIn(text))).toEqual(numbers);
});

test.each(['', '0', '3-1', '1-', 'all', '1-100000', '1-150, 301-450'])('%j is refused', (text) => {
  expect(faultsOf(numbersIn(text))).toHaveLength(1);
});
