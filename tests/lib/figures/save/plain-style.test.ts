import { expect, test } from 'vitest';
import { plainColour } from '../../../../src/lib/figures/save/plain-style.ts';

test.each([
  ['color(srgb 1 0 0.5)', 'rgb(255, 0, 128)', '1'],
  ['color(srgb 0.2 0.28 0.4 / 0.09)', 'rgb(51, 71, 102)', '0.09'],
  ['color(srgb 1.02 -0.01 0)', 'rgb(255, 0, 0)', '1'],
  ['rgba(0, 0, 0, 0.5)', 'rgb(0, 0, 0)', '0.5'],
  ['rgb(1, 2, 3)', 'rgb(1, 2, 3)', '1'],
  ['none', 'none', '1'],
  ['5px, 3px', '5px, 3px', '1'],
])('%s is written %s, covering %s', (value, colour, opacity) => {
  expect(plainColour(value)).toEqual({ colour, opacity });
});
