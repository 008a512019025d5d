import { numberText, sizeText, unitText, valueText, type UnitSystem } from '#core/display.ts';
import type { CornerModel } from '#core/car/car.ts';
import { asRead } from '#core/own-car/as-read.ts';
import { findingOf } from '#core/own-car/findings.ts';
import { isResultId } from '#core/own-car/front-geometry.ts';
import { readingsOf } from '#core/own-car/readings-of.ts';
import {
  isReadingId,
  READING_IDS,
  READINGS,
  USUAL_DOUBT,
  type ReadingId,
  type Readings,
} from '#core/own-car/readings.ts';
import { quantity } from '#core/quantities.ts';
import { writeFixed } from '#core/write-number.ts';
import { storedSI } from '#scenes/parameter-text.ts';

/** How a measured result is said; `share`, `reading`, `doubt` and `moves` are about one reading. */
export const MEASURED_SAYINGS = [
  'value',
  'word',
  'plusMinus',
  'interval',
  'chance',
  'share',
  'moves',
] as const;

export type MeasuredSaying = (typeof MEASURED_SAYINGS)[number];

/** What is asked for. */
export interface MeasuredAsk {
  /** A result, or a reading. */
  readonly of: string;
  readonly say: MeasuredSaying;
  /** The reading whose share is meant. */
  readonly reading?: string | undefined;
  /** Other ± than the usual, as authors write them: `lowerIn: 1, camber: 0.1`, millimetres and degrees. */
  readonly doubts?: string | undefined;
}

/**
 * The words for what measuring a car’s corner comes to, with simple tools and read to a millimetre.
 *
 * @throws Error for a name that is none: a lesson with a slip of the pen must not build
 */
export function measuredWords(
  { corner, anatomy }: CornerModel,
  { of, say, reading, doubts = '' }: MeasuredAsk,
  units: UnitSystem,
): string {
  const readings = asRead(readingsOf(corner, anatomy.rimWidth / 2000));
  const given = doubtsOf(doubts);
  if (isReadingId(of)) {
    const { kind } = READINGS[of];
    return valueText(say === 'plusMinus' ? given[of] : readings[of], kind, units);
  }
  if (!isResultId(of)) {
    throw new Error(`<Measured of="${of}" />: neither a result nor a reading`);
  }
  const about = quantity(of);
  const { value, plusMinus, chance, shares, contributions } = findingOf(of, readings, given);
  const number = (x: number): string => numberText(x, about.kind, units);
  switch (say) {
    case 'value':
      return valueText(value, about.kind, units);
    case 'word':
      return sizeText(value, about, units);
    case 'plusMinus':
      return valueText(plusMinus, about.kind, units);
    case 'interval':
      return `${number(value - plusMinus)} to ${number(value + plusMinus)}${unitText(about.kind, units)}`;
    case 'chance':
      return chance > 0.995 ? `more than ${percent(0.99)}` : percent(chance);
    case 'share':
      return percent(shares[indexOf(reading)] ?? NaN);
    case 'moves':
      return valueText(2 * Math.abs(contributions[indexOf(reading)] ?? NaN), about.kind, units);
  }
}

/** The usual ±, some of them replaced. */
function doubtsOf(written: string): Readings {
  const own = Object.fromEntries(
    written
      .split(',')
      .filter((part) => part.trim() !== '')
      .map((part): [ReadingId, number] => {
        const [id = '', number = ''] = part.split(':').map((piece) => piece.trim());
        const value = Number(number);
        if (isReadingId(id) && number !== '' && value >= 0) {
          return [id, storedSI(READINGS[id].kind, value)];
        }
        throw new Error(`<Measured doubts="${written}">: allowed are readings with their ±`);
      }),
  );
  return { ...USUAL_DOUBT, ...own };
}

function indexOf(reading: string | undefined): number {
  if (reading !== undefined && isReadingId(reading)) return READING_IDS.indexOf(reading);
  throw new Error(`<Measured reading="${reading}">: allowed are ${READING_IDS.join(', ')}`);
}

const percent = (share: number): string => `${writeFixed(100 * share, 0)}\u202f%`;
