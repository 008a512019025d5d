import {
  directionClause,
  numberText,
  shownAsZero,
  sizeText,
  unitText,
  valueText,
  type UnitSystem,
} from '#core/display.ts';
import { isQuantityId, quantity } from '#core/quantities.ts';
import { writeFixed } from '#core/write-number.ts';
import {
  COORDINATES,
  COUNTS,
  isCoordinateId,
  isCountId,
  isRatioId,
  ratioOf,
} from '#scenes/corner/coordinates.ts';
import { valueOf, type Standing } from '#scenes/corner/standing.ts';
import { parameterSI, parameterText } from '#scenes/parameter-text.ts';
import { isParameterId, PARAMETERS } from '#scenes/parameters.ts';
import type { Setting } from '#scenes/setting.ts';

/**
 * How a value is said: `word` with its direction, `clause` the direction alone as a clause, `size` without the
 * sign, `times` as the ratio to the car as it stands.
 */
export type Saying = 'value' | 'word' | 'clause' | 'size' | 'times';

/** The corner that a value is read from. */
interface Read {
  readonly setting: Setting;
  readonly now: Standing;
  /** The car as it stands, steered the same. */
  readonly before: Standing;
  /** Whether the setting is written in the lesson, and not the reader's. */
  readonly fixed?: boolean;
}

/**
 * The words for a parameter, a quantity, a coordinate or a ratio of a corner.
 *
 * @param change the difference from the car as it stands, instead of the value
 * @throws Error for a name that is none of these, and for a written setting whose `times` has nought before it: a
 * lesson with a slip of the pen must not build
 */
export function valueWords(
  of: string,
  { setting, now, before, fixed = false }: Read,
  say: Saying,
  change: boolean,
  units: UnitSystem,
): string {
  if (isParameterId(of)) {
    if (say === 'word') return parameterText(of, setting[of], units);
    return valueText(parameterSI(of, setting[of]), PARAMETERS[of].kind, units);
  }
  if (isRatioId(of)) return writeFixed(ratioOf(of, now), of === 'thrustFactor' ? 2 : 1);
  if (isCountId(of)) return writeFixed(COUNTS[of](now), 0);
  if (isCoordinateId(of)) {
    const place = COORDINATES[of](now) - (change ? COORDINATES[of](before) : 0);
    return valueText(say === 'size' ? Math.abs(place) : place, 'length', units);
  }
  if (!isQuantityId(of)) {
    throw new Error(
      `<Value of="${of}" />: neither a quantity, a parameter, a coordinate nor a ratio`,
    );
  }
  const about = quantity(of);
  const value = valueOf(of, now) - (change ? valueOf(of, before) : 0);
  switch (say) {
    case 'clause':
      return directionClause(value, about, units);
    case 'word':
      return sizeText(value, about, units);
    case 'times':
      if (!shownAsZero(valueOf(of, before), about.kind, units)) {
        return `${writeFixed(value / valueOf(of, before), 1)} times`;
      }
      if (fixed) {
        throw new Error(
          `<Value of="${of}" say="times" />: the ${about.name} is nought on the car as it stands, and nothing is a number of times that; say the value instead`,
        );
      }
      // The reader may have taken the load away: in words, since the lesson cannot know.
      return 'no number of times';
    case 'size':
      return numberText(Math.abs(value), about.kind, units) + unitText(about.kind, units);
    case 'value':
      return valueText(value, about.kind, units);
  }
}
