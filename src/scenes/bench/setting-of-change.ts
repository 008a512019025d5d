import { degrees } from '#core/angle.ts';
import type { Change } from '#core/change.ts';
import { AS_IT_STANDS, type Setting } from '../setting.ts';

/**
 * A change as the setting of a figure: shifts in millimetres and degrees.
 *
 * @param rimGain new rim width less old, in metres
 */
export const settingOfChange = (change: Change, rimGain: number): Setting => ({
  ...AS_IT_STANDS,
  spacer: 1000 * change.spacer,
  inset: 1000 * change.inset,
  radius: 1000 * change.loadedRadius,
  camberAtTop: degrees(change.camberAtUpperPivot),
  camberAtCarrier: degrees(change.camberAtCarrier),
  wheelWidth: 1000 * rimGain,
});
