import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readSettingText, settingText } from '#scenes/setting-text.ts';
import { valueOf } from '../core/example-corner.ts';
import { anySetting } from './scene-arbitraries.ts';

test('a setting is read back as it was written', () => {
  fc.assert(
    fc.property(anySetting, (setting) => {
      expect(valueOf(readSettingText(settingText(setting)))).toEqual(setting);
    }),
  );
});

test('any text is a setting or at fault, and never an exception', () => {
  const parts = fc.constantFrom(
    'spacer',
    'steer',
    ':',
    ',',
    ' ',
    '20',
    '-5',
    '1e-3',
    '\u2212',
    '.',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(parts).map((all) => all.join('')),
      ),
      (text) => {
        const read = readSettingText(text);
        if (read.ok) expect(Object.values(read.value).every(Number.isFinite)).toBe(true);
        else expect(read.faults.length).toBeGreaterThan(0);
      },
    ),
  );
});
