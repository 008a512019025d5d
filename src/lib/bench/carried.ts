import { PARAMETER_IDS, PARAMETERS, type ParameterId } from '#scenes/parameters.ts';
import { AS_IT_STANDS, isChanged, type Setting } from '#scenes/setting.ts';

/** What the bench takes along of a figure’s setting: what a workshop does to a wheel. */
const TAKEN: readonly ParameterId[] = [
  'spacer',
  'inset',
  'wheelWidth',
  'radius',
  'camberAtTop',
  'camberAtCarrier',
];

/** What a link to the bench takes along, in words that go on after the car’s name; empty for the car as it stands. */
export function carriedWords(setting: Setting): string {
  const done = PARAMETER_IDS.filter((id) => isChanged({ ...AS_IT_STANDS, [id]: setting[id] }));
  const taken = done.filter((id) => TAKEN.includes(id));
  const left = done.filter((id) => !TAKEN.includes(id));
  return [
    taken.length > 0 ? ', with the same change' : '',
    taken.includes('radius') ? ', its tyre as the marked size that comes nearest' : '',
    left.length > 0 ? `; what the bench has no field for stays here: ${namesOf(left)}` : '',
  ].join('');
}

const namesOf = (ids: readonly ParameterId[]): string =>
  ids.map((id) => PARAMETERS[id].name.toLowerCase()).join('; ');
