import { describe, expect, test } from 'vitest';
import { faultLine, faultsOf } from '#core/fault.ts';
import { readSettingText, settingText } from '#scenes/setting-text.ts';
import { adjusted, AS_IT_STANDS } from '#scenes/setting.ts';
import { valueOf } from '../core/example-corner.ts';

test('the car as it stands is an empty text', () => {
  expect(settingText(AS_IT_STANDS)).toBe('');
  expect(valueOf(readSettingText(''))).toEqual(AS_IT_STANDS);
  expect(valueOf(readSettingText(' , '))).toEqual(AS_IT_STANDS);
});

test('a setting says what is set, and no more', () => {
  expect(settingText(adjusted(AS_IT_STANDS, { steer: -5, spacer: 20 }))).toBe('spacer:20,steer:-5');
});

test('spaces are forgiven, and the order does not matter', () => {
  const { steer, spacer } = valueOf(readSettingText(' steer : -5.5 , spacer: 20'));
  expect([steer, spacer]).toEqual([-5.5, 20]);
});

describe('a fault says where it is and what is allowed', () => {
  test.each([
    ['spacr:20', 'spacr: is not something that can be set; allowed: upperInboard, upperRearward'],
    [':20', ':20: is not something that can be set'],
    ['toString:20', 'toString: is not something that can be set'],
    ['spacer', 'spacer: is empty; allowed: a number of millimetres from 0 to 60'],
    ['spacer:', 'spacer: is empty'],
    ['spacer:much', 'spacer: is much'],
    ['spacer:0x10', 'spacer: is 0x10'],
    ['spacer:1:2', 'spacer: is 1:2'],
    ['spacer:Infinity', 'spacer: is Infinity'],
    ['spacer:-1', 'spacer: is -1; allowed: a number of millimetres from 0 to 60'],
    ['steer:40.01', 'steer: is 40.01; allowed: a number of degrees from -40 to 40'],
    ['brake:9999', 'brake: is 9999; allowed: a number of newtons from 0 to 6000'],
    ['spacer:1,spacer:2', 'spacer: is set twice; allowed: one value'],
  ])('%s', (text, line) => {
    expect(faultsOf(readSettingText(text)).map(faultLine)).toEqual([expect.stringContaining(line)]);
  });

  test('every one of several', () => {
    const faults = faultsOf(readSettingText('spacr:1,spacer:20,steer:90'));
    expect(faults.map(({ path }) => path)).toEqual(['spacr', 'steer']);
  });
});
