import { describe, expect, test } from 'vitest';
import { QUANTITIES } from '#core/quantities.ts';
import {
  bare,
  computed,
  deg,
  directed,
  mm,
  phrase,
  plain,
  rounded,
  sign,
  term,
} from '#exercises/phrase.ts';

test('a phrase keeps its numbers apart from its words', () => {
  expect(phrase`A spacer of ${mm(20)} and ${phrase`a wheel of ${mm(5)}`}, ${'both'}.`).toEqual([
    'A spacer of ',
    { figure: '20\u202fmm' },
    ' and ',
    'a wheel of ',
    { figure: '5\u202fmm' },
    ', ',
    'both',
    '.',
  ]);
});

test('a phrase without words has no pieces', () => {
  expect(phrase``).toEqual([]);
});

describe('numbers are written', () => {
  test.each([
    ['as they are used', mm(-0.5), '−0.5\u202fmm'],
    ['without a space before the degree sign', deg(12.25), '12.25°'],
    ['rounded as the course shows them', computed(0.05731, 'length'), '57.3\u202fmm'],
    ['rounded to so many decimals', rounded(0.05731, 'mm', 0), '57\u202fmm'],
    ['without a unit', bare(0.21256, 3), '0.213'],
    ['in brackets, in a sum, if negative', term(mm(-8)), '(−8\u202fmm)'],
    ['bare, in a sum, if not', term(mm(8)), '8\u202fmm'],
  ])('%s', (_, figure, text) => {
    expect(figure).toEqual({ figure: text });
  });

  test('with their sign in words', () => {
    expect(plain(directed(-12, 'mm', QUANTITIES.scrubRadius))).toBe('12\u202fmm outboard');
    expect(sign(12, QUANTITIES.scrubRadius)).toBe('inboard');
  });
});
