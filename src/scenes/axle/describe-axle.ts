import { PARAMETER_IDS } from '../parameters.ts';
import type { Setting } from '../setting.ts';
import { measureSentence, settingPhrase, shownAsNone } from '../corner/describe.ts';
import { valueOf, type Standing } from '../corner/standing.ts';
import type { AxleLook } from './axle-scene.ts';

/** What the drawing shows, in words and from the same numbers. */
export function axleDescription(now: Standing, setting: Setting, look: AxleLook): string {
  const set = PARAMETER_IDS.filter((id) => !shownAsNone(id, setting[id], look.units));
  return [
    'Both front wheels seen from above, the front of the car below and its left on the right.',
    set.length === 0
      ? 'The car as it stands, without a load.'
      : `Set: ${set.map((id) => settingPhrase(id, setting[id], look.units)).join('; ')}.`,
    ...look.measures.map((id) => measureSentence(id, valueOf(id, now), look.units)),
  ].join(' ');
}
