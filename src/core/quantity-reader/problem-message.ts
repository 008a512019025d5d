import { DIMENSIONS } from '../units/dimension.ts';
import { UNITS, unitsOf, type UnitName } from '../units/units.ts';
import { writeShortest } from '../write-number.ts';
import type { ReadingProblem } from './reading.ts';

/**
 * What is wrong with a typed quantity and what is allowed, as one or two plain sentences for the
 * person who typed it: `“12 kN” is a force, but a length is asked for. Allowed: mm, cm, m, in or ft.`
 */
export function problemMessage(problem: ReadingProblem): string {
  const { text, wanted } = problem;
  const typed = `“${text}”`;
  switch (problem.kind) {
    case 'empty':
      return `Nothing has been entered. Allowed: ${bareNumber(wanted)}.`;
    case 'not-a-number':
      return `${typed} ${problem.wrong}. Allowed: ${problem.allowed}.`;
    case 'ambiguous':
      return `${typed} can be read in more than one way. Enter ${listed(problem.readings.map((reading) => reading.text))}.`;
    case 'unknown-unit': {
      const { suggestion } = problem;
      const hint = suggestion === undefined ? '' : ` Did you mean ${UNITS[suggestion].symbol}?`;
      return `“${problem.unitText}” is not a unit that is known here.${hint} ${allowedUnits(wanted)}`;
    }
    case 'wrong-dimension': {
      const { found, expected } = problem;
      return `${typed} is ${DIMENSIONS[found].noun}, but ${DIMENSIONS[expected].noun} is asked for. ${allowedUnits(wanted)}`;
    }
    case 'too-large': {
      const limit = writeShortest(problem.largest);
      const unit = UNITS[wanted].symbol;
      return `${typed} is too large. Allowed: numbers from −${limit} to ${limit}${unit && ` ${unit}`}.`;
    }
  }
}

/** Units that can be typed: `mm, cm, m, in or ft`; for a ratio `no unit or %`. */
const unitsWritten = (wanted: UnitName): string =>
  listed(
    unitsOf(UNITS[wanted].dimension)
      .filter((name) => name !== 'deg-min')
      .map((name) => UNITS[name].symbol || 'no unit'),
  );

const allowedUnits = (wanted: UnitName): string => `Allowed: ${unitsWritten(wanted)}.`;

function bareNumber(wanted: UnitName): string {
  if (wanted === 'ratio') return 'a number, or a percentage with its sign';
  if (wanted === 'deg-min') return 'degrees and minutes, such as 1°30′';
  return `a number, in ${UNITS[wanted].symbol} unless another unit is given`;
}

/** `a, b or c`. */
function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}
