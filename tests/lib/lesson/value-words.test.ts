import { describe, expect, test } from 'vitest';
import { standing } from '#scenes/corner/standing.ts';
import { AS_IT_STANDS } from '#scenes/setting.ts';
import { valueWords, type Saying } from '../../../src/lib/lesson/value-words.ts';
import { writtenSetting } from '../../../src/lib/lesson/written-setting.ts';
import { trainingCar } from '../../training-cars.ts';

const { left } = trainingCar('linnet');

/** The Linnet's scrub radius is −8.2 mm; a spacer of 20 mm makes it 11.8 mm. */
const said = (of: string, say: Saying, set = '', change = false): string => {
  const setting = writtenSetting(set);
  const read = { setting, now: standing(left, setting), before: standing(left, AS_IT_STANDS) };
  // The space before a unit is narrow and does not break.
  return valueWords(of, read, say, change, 'metric').replace('\u202f', ' ');
};

describe('a quantity is said', () => {
  test.each<[Saying, string]>([
    ['value', '−8.2 mm'],
    ['size', '8.2 mm'],
    ['word', '8.2 mm outboard'],
    ['clause', 'the axis meets the road outboard of the contact centre'],
    ['times', '1.0 times'],
  ])('as %s: %s', (say, expected) => {
    expect(said('scrubRadius', say)).toBe(expected);
  });

  test('as it is at a setting, or as what the setting made of it', () => {
    expect(said('scrubRadius', 'value', 'spacer: 20')).toBe('11.8 mm');
    expect(said('scrubRadius', 'value', 'spacer: 20', true)).toBe('20.0 mm');
    expect(said('scrubRadius', 'times', 'spacer: 20')).toBe('−1.4 times');
    expect(said('rodForce', 'times', 'spacer: 20')).toBe('no number of times');
  });
});

describe('a parameter is said', () => {
  test('as a value, or with its direction', () => {
    expect(said('spacer', 'value', 'spacer: 20')).toBe('20.0 mm');
    expect(said('steer', 'word', 'steer: -30')).toBe('30.0° to the right');
    expect(said('spacer', 'word')).toBe('no spacer');
  });
});

test('a number of times what was nought is said in words, and does not build where the lesson has written it', () => {
  const setting = writtenSetting('spacer: 20');
  const [now, before] = [setting, AS_IT_STANDS].map((one) => standing(left, one));
  if (!now || !before) throw new Error('two settings make two corners');
  const times = (fixed: boolean): string =>
    valueWords('rodForce', { setting, now, before, fixed }, 'times', false, 'metric');
  expect(times(false)).toBe('no number of times');
  expect(() => times(true)).toThrow(/rodForce.*tie-rod force is nought on the car as it stands/);
});

test('a coordinate has a change too', () => {
  const inboard = said('upperOut', 'value', 'camberAtTop: -2', true);
  expect(inboard).toMatch(/^−2\d\.\d mm$/);
  expect(said('upperOut', 'size', 'camberAtTop: -2', true)).toBe(inboard.slice(1));
  expect(said('lowerOut', 'value', 'camberAtTop: -2', true)).toBe('0.0 mm');
});

test('a coordinate is a height or a distance, whatever is asked for', () => {
  expect(said('lowerHeight', 'value')).toMatch(/^\d+\.\d mm$/);
  expect(said('lowerHeight', 'value', 'lowerOutboard: 20')).toBe(said('lowerHeight', 'value'));
});

test('a lever and the sizes of the steering are lengths, and the help of power steering a bare number', () => {
  expect(said('rodLever', 'value')).toMatch(/^1\d\d\.\d mm$/);
  expect(said('travelPerTurn', 'value')).toBe('48.0 mm');
  expect(said('rimRadius', 'value')).toBe('185.0 mm');
  expect(said('assist', 'value')).toBe('5.0');
});

test('what is none of these does not build', () => {
  expect(() => said('scrub', 'value')).toThrow('<Value of="scrub" />');
});
