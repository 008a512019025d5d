import { describe, expect, test } from 'vitest';
import { toSI } from '#core/units/convert.ts';
import type { Entry } from '#exercises/grade.ts';
import { plain } from '#exercises/phrase.ts';
import { respond } from '#exercises/respond.ts';
import { sample } from './sample-kind.ts';

const mm = (value: number): number => toSI(value, 'mm');
const deg = (value: number): number => toSI(value, 'deg');

const said = (index: number, ...entries: readonly Entry[]): string =>
  plain(respond(sample(), entries, index).words).replaceAll('\u202f', ' ');

describe('the answer to', () => {
  test.each<[string, number, readonly Entry[], string]>([
    [
      'a right entry says what it means',
      1,
      [mm(60), mm(16)],
      'That fits: 16 mm, and the axis meets the road inboard of the contact centre.',
    ],
    [
      'a right entry without a direction names it',
      0,
      [mm(60)],
      'That fits: 60 mm, the loaded radius.',
    ],
    [
      'an entry that follows on says from what, and where the true road leads',
      1,
      [mm(90), mm(46)],
      'This follows from your own value for “twice the first number”, so the method fits and nothing more is lost. From 60 mm it comes to this: 16 mm, and the axis meets the road inboard of the contact centre.',
    ],
    ['a slip is its text', 1, [mm(60), mm(104)], 'That is the sum.'],
    ['a slip on one’s own value is its text too', 1, [mm(90), mm(134)], 'That is the sum.'],
    [
      'nothing says what to do',
      1,
      [mm(60)],
      'Nothing stands here yet. Enter a length in mm as a whole number, and its direction. Take the second number away.',
    ],
    [
      'nothing, where an angle is asked for',
      2,
      [],
      'Nothing stands here yet. Enter an angle in degrees with 1 decimal, and its direction. Take the arc tangent.',
    ],
    [
      'a part left out says what it would have been',
      0,
      [undefined, mm(16)],
      'Left out, but what follows shows that it was known: 60 mm, the loaded radius.',
    ],
    [
      'a given says that it is one',
      0,
      [mm(-44)],
      '44 mm is one of the numbers given, not yet what is asked. Take the first number twice.',
    ],
    [
      'the wrong sign says what it says',
      1,
      [mm(60), mm(-16)],
      'The size fits, the direction does not: this entry says that the axis meets the road outboard of the contact centre. Take the second number away.',
    ],
    [
      'a wrong sign of a quantity without one',
      0,
      [mm(-60)],
      'The size fits, the direction does not: this entry says that the sign is turned round. Take the first number twice.',
    ],
    [
      'metres for millimetres',
      0,
      [mm(60_000)],
      'About a thousand times as large as what is asked: metres and millimetres have changed places. Take the first number twice.',
    ],
    [
      'inches for millimetres',
      0,
      [mm(60 / 25.4)],
      'About twenty-five times as small as what is asked: inches and millimetres have changed places. Take the first number twice.',
    ],
    [
      'a lost decimal place',
      0,
      [mm(6)],
      'About ten times as small as what is asked: look at the decimal point. Take the first number twice.',
    ],
    [
      'half of it',
      1,
      [mm(60), mm(8)],
      'About half as large as what is asked: has a diameter stood in for a radius, or both sides of the car for one? Take the second number away.',
    ],
    [
      'an angle in radians',
      2,
      [mm(60), mm(16), deg(0.159)],
      'That is the angle in radians; degrees are asked for. Take the arc tangent.',
    ],
    [
      'an angle turned into degrees twice',
      2,
      [mm(60), mm(16), deg((9.09 * 180) / Math.PI)],
      'That has been turned into degrees once too often. Take the arc tangent.',
    ],
    [
      'anything else is the next step',
      0,
      [mm(71)],
      'That does not fit, and none of the usual slips leads there. Take the first number twice.',
    ],
    [
      'a size that is seen from one’s own value, not from the true one',
      1,
      [mm(90), mm(460)],
      'About ten times as large as what is asked: look at the decimal point. Take the second number away.',
    ],
    [
      'an entry after nought, which leads nowhere',
      1,
      [mm(0), mm(-44)],
      'Your value for “twice the first number” leads no farther. Go on from 60 mm. 44 mm is one of the numbers given, not yet what is asked. Take the second number away.',
    ],
    [
      'an entry after a value that makes this one impossible',
      1,
      [mm(-200), mm(-244)],
      'Your value for “twice the first number” leads no farther. Go on from 60 mm. That does not fit, and none of the usual slips leads there. Take the second number away.',
    ],
  ])('%s', (_, index, entries, words) => {
    expect(said(index, ...entries)).toBe(words);
  });

  test.each<[string, number, readonly Entry[], string]>([
    [
      'an entry that follows on',
      1,
      [mm(90), mm(46)],
      'This follows from your own value for “twice the first number”, so the method fits and nothing more is lost. Put that value right, and this one with it.',
    ],
    [
      'an entry after nought, which leads nowhere',
      1,
      [mm(0), mm(-44)],
      'Your value for “twice the first number” leads no farther. Put that right first. 44 mm is one of the numbers given, not yet what is asked. Take the second number away.',
    ],
  ])(
    '%s tells no answer while the exercise may be tried again for marks',
    (_, index, entries, words) => {
      const { words: open } = respond(sample(), entries, index, { answers: false });
      expect(plain(open).replaceAll('\u202f', ' ')).toBe(words);
    },
  );

  test('a hint is kept back from whoever has not asked for it where it costs marks', () => {
    const told = (entry: Entry): string =>
      plain(respond(sample(), [entry], 0, { hints: false }).words);
    const hint = plain(sample().parts[0]?.hint() ?? []);
    expect(hint).not.toBe('');
    for (const entry of [undefined, mm(777)]) {
      expect(told(entry)).not.toContain(hint);
      expect(plain(respond(sample(), [entry], 0).words)).toContain(hint);
    }
    expect(told(mm(777))).toMatch(
      /^That does not fit, and none of the usual slips leads there\.\s*$/,
    );
  });

  test('a part that is not there is a programmer’s error', () => {
    expect(() => respond(sample(), [], 3)).toThrow(RangeError);
  });
});
