import { expect, test } from 'vitest';
import { countedFrom, QUANTITIES, signPhrase } from '#core/quantities.ts';

test('one is ahead of something, but behind it', () => {
  expect(countedFrom('ahead', 'the wheel')).toBe('ahead of the wheel');
  expect(countedFrom('behind', 'the wheel')).toBe('behind the wheel');
});

test('a sign says what it is counted from, where that is a point', () => {
  expect(signPhrase(QUANTITIES.scrubRadius, 'negative')).toBe('outboard of the contact centre');
  expect(signPhrase(QUANTITIES.trail, 'negative')).toBe('behind the contact centre');
  expect(signPhrase(QUANTITIES.caster, 'positive')).toBe('rearward');
  expect(signPhrase(QUANTITIES.loadedRadius, 'positive')).toBe('');
});
