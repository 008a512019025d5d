import { describe, expect, test } from 'vitest';
import { QUANTITIES } from '#core/quantities.ts';
import { toSI } from '#core/units/convert.ts';
import { readEntry } from '#exercises/read-entry.ts';

const scrub = { quantity: QUANTITIES.scrubRadius, unit: 'mm' } as const;
const radius = { quantity: QUANTITIES.loadedRadius, unit: 'mm' } as const;
const caster = { quantity: QUANTITIES.caster, unit: 'deg' } as const;

describe('a signed quantity takes its sign', () => {
  test.each([
    ['from the word', '8', 'negative', -0.008],
    ['from the other word', '8', 'positive', 0.008],
    ['from a minus alone', '−8', undefined, -0.008],
    ['from a hyphen alone', '-8', undefined, -0.008],
    ['from a plus alone', '+8', undefined, 0.008],
    ['once, where minus and word agree', '−8', 'negative', -0.008],
    ['once, where plus and word agree', '+ 8', 'positive', 0.008],
    ['from the word, with another unit', '0.5 in', 'negative', -0.0127],
  ] as const)('%s', (_, text, word, value) => {
    expect(readEntry({ text, word }, scrub)).toEqual({ kind: 'value', value });
  });

  test('from the word, for an angle in degrees and minutes', () => {
    const reading = readEntry({ text: '0°24′', word: 'negative' }, caster);
    expect(reading).toEqual({ kind: 'value', value: toSI(-0.4, 'deg') });
  });
});

describe('nought has no direction', () => {
  test.each([undefined, 'positive', 'negative'] as const)('with the word %s', (word) => {
    expect(readEntry({ text: '0', word }, scrub)).toEqual({ kind: 'value', value: 0 });
    expect(readEntry({ text: '-0.0', word }, scrub)).toEqual({ kind: 'value', value: 0 });
  });
});

test('a quantity without a direction is taken with the sign that was typed', () => {
  expect(readEntry({ text: '300' }, radius)).toEqual({ kind: 'value', value: 0.3 });
  expect(readEntry({ text: '-12' }, radius)).toEqual({ kind: 'value', value: -0.012 });
});

test.each(['', '   ', '\u202f'])('nothing typed is no entry, even with a word chosen', (text) => {
  expect(readEntry({ text }, scrub)).toEqual({ kind: 'empty' });
  expect(readEntry({ text, word: 'positive' }, scrub)).toEqual({ kind: 'empty' });
});

describe('a problem is shown at its place', () => {
  test.each([
    [
      'the word, where none is chosen',
      '8',
      undefined,
      'word',
      'Which way? Choose inboard or outboard.',
    ],
    [
      'the word, where it contradicts a minus',
      '-8',
      'positive',
      'word',
      'The minus says outboard, but inboard is chosen.',
    ],
    [
      'the word, where it contradicts a plus',
      '+8',
      'negative',
      'word',
      'The plus says inboard, but outboard is chosen.',
    ],
    [
      'the number, where it is none',
      'eight',
      'positive',
      'number',
      '“eight” does not start with a number.',
    ],
    ['the number, where it can be two', '1,234', 'positive', 'number', 'in more than one way'],
    [
      'the number, where its unit is a force',
      '8 N',
      'positive',
      'number',
      'is a force, but a length is asked for',
    ],
    [
      'the number, where its unit is unknown',
      '8 mn',
      'positive',
      'number',
      'is not a unit that is known here',
    ],
  ] as const)('at %s', (_, text, word, place, message) => {
    expect(readEntry({ text, word }, scrub)).toMatchObject({
      kind: 'problem',
      place,
      message: expect.stringContaining(message) as string,
    });
  });
});
