import { expect, test } from 'vitest';
import { rateHub } from '#core/bearing/hub-rating.ts';
import { rowOf } from './arbitraries.ts';

/**
 * No complete published hub example with numbers has been found. This one at least leads through the whole
 * chain: a hub with its load line in the middle, driven straight ahead, is a catalogue's pair of bearings.
 */
test('a hub of two single bearings straight ahead has the life of a catalogue’s pair', () => {
  const source = 'SKF, Rolling bearings, p. 402: C of a pair = 1.62 C of one (tpsbearing.com)';
  const row = rowOf('ball', 22_500, 40);
  const { life } = rateHub(
    { loadLineOffset: 0, spread: 0.0546, outboard: row, inboard: row },
    [{ share: 1, vertical: 4000, inward: 0 }],
    { loadedRadius: 0.3, rollingRadius: 0.3 },
  );
  const ofPair = ((1.62 * 22_500) / 4000) ** 3;
  // 1.62 is rounded from 1.6245: 0.3 %, so 0.9 % of life.
  expect(Math.abs(life / ofPair - 1), source).toBeLessThanOrEqual(0.009);
});
