import { describe, expect, test } from 'vitest';
import { toSI } from '#core/units/convert.ts';
import { grade, gradePart, own, type Entry, type Verdict } from '#exercises/grade.ts';
import { sample } from './sample-kind.ts';

const mm = (value: number): number => toSI(value, 'mm');
const deg = (value: number): number => toSI(value, 'deg');
/** Of the sample, in SI. */
const ANSWERS = [mm(60), mm(16), deg(9.09)];

const verdicts = (...entries: readonly Entry[]): readonly Verdict[] =>
  grade(sample(), entries).parts.map(({ verdict }) => verdict);
const earned = (...entries: readonly Entry[]): number => grade(sample(), entries).earned;

describe('grading', () => {
  test.each<[string, readonly Entry[], readonly Verdict[], number]>([
    ['all answers', ANSWERS, ['right', 'right', 'right'], 4],
    ['the last answer alone', [undefined, undefined, deg(9.1)], ['implied', 'implied', 'right'], 4],
    ['the middle answer alone', [undefined, mm(16)], ['implied', 'right', 'missing'], 3],
    ['nothing', [], ['missing', 'missing', 'missing'], 0],
    [
      'a slip that is followed through',
      [mm(90), mm(46), deg(24.7)],
      ['slip', 'follow-on', 'follow-on'],
      3,
    ],
    [
      'an unknown value that is followed through',
      [mm(71), mm(27), deg(15.1)],
      ['unknown', 'follow-on', 'follow-on'],
      3,
    ],
    [
      'a slip followed through with a part left out',
      [mm(90), undefined, deg(24.7)],
      ['slip', 'implied', 'follow-on'],
      3,
    ],
    [
      'two slips one after the other, each on one’s own value',
      [mm(90), mm(134), deg(53.3)],
      ['slip', 'slip', 'follow-on'],
      1,
    ],
    ['a slip, then the true answer', [mm(90), mm(16), deg(9.1)], ['slip', 'right', 'right'], 3],
    [
      'a part left out before a slip, which nothing vouches for',
      [undefined, mm(104), deg(46.1)],
      ['missing', 'slip', 'follow-on'],
      1,
    ],
  ])('of %s', (_, entries, expected, marks) => {
    expect(verdicts(...entries)).toEqual(expected);
    expect(earned(...entries)).toBe(marks);
  });

  test('does not depend on what is entered later', () => {
    expect(verdicts(mm(90), mm(46))[0]).toBe(verdicts(mm(90), mm(46), deg(1))[0]);
    expect(verdicts(mm(90), mm(46))[1]).toBe(verdicts(mm(90), mm(46), deg(1))[1]);
  });

  test('calls right what follows from an earlier value that is right within its tolerance', () => {
    // 60.3 mm is right; 16.5 mm lies beyond its own tolerance, but follows from 60.3 mm.
    expect(verdicts(mm(60.3), mm(16.5), deg(9.1))).toEqual(['right', 'right', 'right']);
  });

  test('takes an entry at the very edge of the tolerance', () => {
    expect(verdicts(mm(60.3))[0]).toBe('right');
    expect(verdicts(mm(60.31))[0]).toBe('unknown');
  });

  test('tells a slip after whole rounding, and takes the nearest', () => {
    expect(verdicts(mm(90.4))[0]).toBe('slip');
    expect(verdicts(mm(92))[0]).toBe('unknown');
  });

  test('goes on from the true answer where the learner’s own is nought', () => {
    expect(verdicts(mm(0), mm(16))).toEqual(['unknown', 'right', 'missing']);
    expect(verdicts(mm(0), mm(-44))).toEqual(['unknown', 'unknown', 'missing']);
  });

  test('goes on from the true answer where the learner’s own cannot be', () => {
    const { parts } = sample();
    expect(own(parts, [mm(-500), mm(-544)], 2)).toEqual([mm(-500), parts[1]?.answer]);
  });

  test('takes no angle beyond a right angle for following on', () => {
    const beyond = [mm(90), mm(46), Math.atan(0.46) + Math.PI];
    expect(verdicts(...beyond)[2]).toBe('unknown');
  });
});

test('one part is graded by itself, from whatever values come before it', () => {
  const [, less] = sample().parts;
  if (!less) throw new Error('the sample has lost a part');
  expect(gradePart(less, mm(26), [mm(70)])).toEqual({
    verdict: 'follow-on',
    earned: 2,
    possible: 2,
  });
  expect(gradePart(less, mm(104), [mm(60)])).toMatchObject({ slip: { id: 'added' }, earned: 0 });
});
