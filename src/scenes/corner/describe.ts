import { capital } from '#core/capital.ts';
import { directionClause, spokenValue, type UnitSystem } from '#core/display.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';
import { PARAMETER_IDS, PARAMETERS, type ParameterId } from '../parameters.ts';
import { VIEW_NAMES, type View } from '../plane.ts';
import type { Setting } from '../setting.ts';
import { parameterText } from '../parameter-text.ts';
import { valueOf, type Standing } from './standing.ts';

/** What the drawing shows, in words and from the same numbers: view, settings, and each measure with its direction. */
export function description(
  view: View,
  standing: Standing,
  setting: Setting,
  measures: readonly QuantityId[],
  units: UnitSystem,
): string {
  const side = standing.corner.side;
  const set = PARAMETER_IDS.filter((id) => !shownAsNone(id, setting[id], units));
  const sentences = [
    `The ${side} front corner seen ${VIEW_NAMES[view]}.`,
    set.length === 0
      ? 'The car as it stands.'
      : `Changed: ${set.map((id) => settingPhrase(id, setting[id], units)).join('; ')}.`,
    ...measures.map((id) => measureSentence(id, valueOf(id, standing), units)),
  ];
  return sentences.join(' ');
}

/** Whether a parameter prints as nought: a figure on its way to a setting passes such values. */
export const shownAsNone = (id: ParameterId, value: number, units: UnitSystem): boolean =>
  parameterText(id, value, units) === PARAMETERS[id].none;

export const settingPhrase = (id: ParameterId, value: number, units: UnitSystem): string =>
  `${PARAMETERS[id].name.toLowerCase()} ${parameterText(id, value, units)}`;

/** A quantity with its value and its direction, as a sentence. */
export function measureSentence(id: QuantityId, value: number, units: UnitSystem): string {
  const spoken = spokenValue(value, quantity(id), units);
  const clause = directionClause(value, quantity(id), units);
  const start = capital(spoken);
  return clause === '' ? `${start}.` : `${start}: ${clause}.`;
}
