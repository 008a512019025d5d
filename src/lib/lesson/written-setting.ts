import { faultLine } from '#core/fault.ts';
import { readSettingText } from '#scenes/setting-text.ts';
import type { Setting } from '#scenes/setting.ts';

/**
 * A setting as authors write it in an attribute: `spacer: 20, steer: -5`.
 *
 * @throws Error with the reader's words: a lesson with a slip of the pen must not build
 */
export function writtenSetting(text: string): Setting {
  const read = readSettingText(text);
  if (!read.ok) throw new Error(`set="${text}": ${read.faults.map(faultLine).join('; ')}`);
  return read.value;
}
