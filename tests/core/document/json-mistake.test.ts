import { describe, expect, test } from 'vitest';
import { jsonMistake } from '#core/document/json-mistake.ts';

describe('the first mistake in a text', () => {
  test.each([
    ['', 1, 1, 'the end', 'a value'],
    ['{"a": 1', 1, 8, 'the end', 'a comma or }'],
    ['[1, 2', 1, 6, 'the end', 'a comma or ]'],
    ['{"a": 1,}', 1, 9, '}', 'a key in double quotes'],
    ['[1, 2,]', 1, 7, ']', 'a value'],
    ['{\n  "a": 1\n  "b": 2\n}', 3, 3, '"b"', 'a comma or }'],
    ['{a: 1}', 1, 2, 'a', 'a key in double quotes or }'],
    ["{'a': 1}", 1, 2, "'", 'a key in double quotes or }'],
    ['{"a" 1}', 1, 6, '1', 'a colon'],
    ['{"a": }', 1, 7, '}', 'a value'],
    ['{"a": NaN}', 1, 7, 'NaN', 'a value'],
    ['{"a": 1.}', 1, 7, '1.', 'a value'],
    ['{"a": 01}', 1, 7, '01', 'a value'],
    ['{"a": 1,5}', 1, 9, '5', 'a key in double quotes'],
    ['{"a": +5}', 1, 7, '+5', 'a value'],
    ['[tru]', 1, 2, 'tru', 'a value or ]'],
    ['[1]]', 1, 4, ']', 'nothing more'],
    ['{} {}', 1, 4, '{', 'nothing more'],
    ['["open]', 1, 2, '"open]', 'a value or ]'],
    ['["tab\there"]', 1, 2, 'a control character', 'a value or ]'],
    ['// note\n{}', 1, 1, '/', 'a value'],
    ['{}\r\n,', 2, 1, ',', 'nothing more'],
    ['[:]', 1, 2, ':', 'a value or ]'],
  ])(
    '%j is at line %d, column %d: %s where there may be %s',
    (text, line, column, found, allowed) => {
      expect(jsonMistake(text)).toEqual({ line, column, found, allowed });
    },
  );
});
