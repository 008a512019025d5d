import { expect, test } from 'vitest';
import { AS_IT_STANDS } from '#scenes/setting.ts';
import { writtenSetting } from '../../../src/lib/lesson/written-setting.ts';

test('a setting is written as authors write it', () => {
  expect(writtenSetting('spacer: 20, steer: -5')).toEqual({
    ...AS_IT_STANDS,
    spacer: 20,
    steer: -5,
  });
  expect(writtenSetting('')).toEqual(AS_IT_STANDS);
});

test('a setting with a slip of the pen does not build, and says every slip', () => {
  expect(() => writtenSetting('spacr: 20, steer: 400')).toThrow(
    /set="spacr: 20, steer: 400": spacr: is not something that can be set.*; steer: is 400; allowed: .* from -40 to 40/,
  );
});
