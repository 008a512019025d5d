import { settingText } from '#scenes/setting-text.ts';
import type { Setting } from '#scenes/setting.ts';

/** What asks the bench for a training car, behind its address, with what has been done to it in a figure. */
export function carQuery(car: string, setting: Setting): string {
  const text = settingText(setting);
  return `?car=${car}${text === '' ? '' : `&set=${text}`}`;
}
