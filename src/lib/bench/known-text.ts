import type { UnitSystem } from '#core/display.ts';
import { isCross } from '#core/judgement/cross-inputs.ts';
import { inputAbout, type InputId } from '#core/judgement/inputs.ts';
import { SOURCES, type KnownValue } from '#core/judgement/known-value.ts';
import { fromSI } from '#core/units/convert.ts';
import { UNITS } from '#core/units/units.ts';
import { writeFixed } from '#core/write-number.ts';
import { shownUnit } from './entry';

/** How close inputs are shown, by the unit that they are shown in. */
const DECIMALS: Readonly<Record<string, number>> = {
  mm: 1,
  in: 2,
  deg: 2,
  N: 0,
  lbf: 0,
  percent: 1,
  ratio: 2,
};

/** An input’s value alone, in SI, as tables write it: `−0.50°`. */
export function inputText(id: InputId, si: number, system: UnitSystem): string {
  const unit = shownUnit(inputAbout(id).unit, system);
  const { symbol } = UNITS[unit];
  const space = symbol === '' || symbol === '°' ? '' : '\u202f';
  return `${writeFixed(fromSI(si, unit), DECIMALS[unit] ?? 1)}${space}${symbol}`;
}

/** An input as it is taken: `45.0 mm ± 2.0 mm`; exact where nothing is doubtful. */
export const knownText = (id: InputId, known: KnownValue, system: UnitSystem): string =>
  known.plusMinus === 0
    ? inputText(id, known.value, system)
    : `${inputText(id, known.value, system)} ± ${inputText(id, known.plusMinus, system)}`;

/** What is taken where nothing is entered, as a sentence. */
export const takenText = (id: InputId, known: KnownValue, system: UnitSystem): string =>
  isCross(id)
    ? 'Not entered: taken alike, left and right.'
    : known.source === 'given'
      ? `As the car’s document has it: ${knownText(id, known, system)}.`
      : `Not entered: taken as ${knownText(id, known, system)}, ${SOURCES[known.source].word} of such cars.`;
