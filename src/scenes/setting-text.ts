import { failure, success, type Fault, type Outcome } from '#core/fault.ts';
import { isParameterId, PARAMETER_IDS, PARAMETERS, type ParameterId } from './parameters.ts';
import { adjusted, AS_IT_STANDS, type Setting } from './setting.ts';

/** A setting as a short text for an address: `spacer:20,steer:-5`; empty for the car as it stands. */
export const settingText = (setting: Setting): string =>
  PARAMETER_IDS.filter((id) => setting[id] !== 0)
    .map((id) => `${id}:${setting[id]}`)
    .join(',');

/** Settings are stored in the same units whatever the reader is shown. */
const STORED_UNITS = {
  length: 'millimetres',
  angle: 'degrees',
  force: 'newtons',
  moment: 'newton metres',
  life: 'million revolutions',
  distance: 'kilometres',
  speed: 'kilometres an hour',
  share: 'per cent',
} as const;

/** A number as `settingText` writes it: `12`, `-0.5`. */
const NUMBER = /^[+-]?\d+(\.\d+)?(e-\d+)?$/;

/** Reads `settingText` back; every fault says which part of the text it means and what is allowed there. */
export function readSettingText(text: string): Outcome<Setting> {
  const changes: Partial<Record<ParameterId, number>> = {};
  const faults: Fault[] = [];
  for (const part of text.split(',').filter((p) => p.trim() !== '')) {
    const [id = '', ...rest] = part.split(':').map((piece) => piece.trim());
    const number = rest.join(':');
    if (!isParameterId(id)) {
      faults.push({
        path: id === '' ? part.trim() : id,
        wrong: 'is not something that can be set',
        allowed: PARAMETER_IDS.join(', '),
      });
      continue;
    }
    const { least, most, kind } = PARAMETERS[id];
    const value = NUMBER.test(number) ? Number(number) : NaN;
    if (!(value >= least && value <= most)) {
      faults.push({
        path: id,
        wrong: `is ${number === '' ? 'empty' : number}`,
        allowed: `a number of ${STORED_UNITS[kind]} from ${least} to ${most}`,
      });
      continue;
    }
    if (changes[id] !== undefined) {
      faults.push({ path: id, wrong: 'is set twice', allowed: 'one value' });
    }
    changes[id] = value;
  }
  return faults.length > 0 ? failure(...faults) : success(adjusted(AS_IT_STANDS, changes));
}
