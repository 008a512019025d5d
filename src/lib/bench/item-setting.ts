import { diameterOf } from '#exercises/paper/tyre.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { fromSI, toSI } from '#core/units/convert.ts';

/**
 * What an exercise does to its wheel, as the setting of a figure: spacer, another inset, another width, another tyre, another camber. What an
 * exercise asks back from, such as a wanted scrub radius, does nothing to a car yet.
 *
 * @param item the exercise’s numbers, with their units in their names
 */
export function settingOfItem(kind: string, item: object): Setting {
  const numbers = item as Readonly<Record<string, unknown>>;
  const number = (key: string): number => {
    const value = numbers[key];
    return typeof value === 'number' ? value : 0;
  };
  /** How far a value is from the one before it, where the exercise has both. */
  const gain = (now: string, before: string): number =>
    now in numbers && before in numbers ? number(now) - number(before) : 0;
  /** How much larger a tyre is in radius, by its loaded radius or by the sizes that are named. */
  const radius = (): number => {
    if (!('oldRim' in numbers)) return gain('newRadius_mm', 'radius_mm');
    const diameter = (of: 'old' | 'new'): number =>
      diameterOf({
        width: number(`${of}Width`),
        aspect: number(`${of}Aspect`),
        rim: number(`${of}Rim`),
      });
    return Number(fromSI((diameter('new') - diameter('old')) / 2, 'mm').toFixed(1));
  };
  const camber = gain('newCamber_deg', 'camber_deg');
  return adjusted(AS_IT_STANDS, {
    spacer: number('spacer_mm'),
    radius: radius(),
    inset: gain('newInset_mm', 'oldInset_mm'),
    wheelWidth: Math.round(fromSI(toSI(gain('newWidth_in', 'oldWidth_in'), 'in'), 'mm')),
    ...(kind.endsWith('upper-pivot') ? { camberAtTop: camber } : { camberAtCarrier: camber }),
  });
}
