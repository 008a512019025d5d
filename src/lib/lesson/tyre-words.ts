import { valueText, type UnitSystem } from '#core/display.ts';
import { faultLine } from '#core/fault.ts';
import { compareTyres, trueSpeed } from '#core/tyre/compare.ts';
import { designation } from '#core/tyre/designation.ts';
import { outerDiameter, rimDiameter, sectionHeight, sectionWidth } from '#core/tyre/dimensions.ts';
import { loadedRadius } from '#core/tyre/loaded-radius.ts';
import { parseTyre } from '#core/tyre/parse-tyre.ts';
import { rollingCircumference, rollingRadius } from '#core/tyre/rolling.ts';
import type { Tyre } from '#core/tyre/tyre.ts';
import { fromSI, toSI } from '#core/units/convert.ts';
import { writeFixed } from '#core/write-number.ts';

/** Lengths of one tyre, in metres. */
const LENGTHS = {
  width: sectionWidth,
  height: sectionHeight,
  rim: rimDiameter,
  diameter: outerDiameter,
  unloaded: (tyre) => outerDiameter(tyre) / 2,
  loaded: (tyre) => loadedRadius(tyre).value,
  loadedLeast: (tyre) => loadedRadius(tyre).least,
  loadedMost: (tyre) => loadedRadius(tyre).most,
  rolling: (tyre) => rollingRadius(tyre).value,
  circumference: (tyre) => rollingCircumference(tyre).value,
} as const satisfies Record<string, (tyre: Tyre) => number>;

/** What else is said of a tyre, or of one in place of another. */
const OTHERS = ['size', 'turns', 'shown', 'share', 'trueSpeed'] as const;

/** What a lesson asks of a tyre. */
interface TyreAsked {
  readonly of: string;
  readonly size: string;
  /** The tyre that it is compared with. */
  readonly against?: string | undefined;
  /** What the speedometer shows, in km/h. */
  readonly shown_kmh: number;
}

const isLength = (of: string): of is keyof typeof LENGTHS => Object.hasOwn(LENGTHS, of);

/**
 * A length of a tyre, its turns a kilometre, or what it changes in place of another: with `against` a length is the
 * difference, `share` the difference of the diameters in per cent, and `trueSpeed` the speed behind a dial.
 *
 * @throws Error for an unknown word or size: a lesson with a slip of the pen must not build
 */
export function tyreWords(
  { of, size, against, shown_kmh }: TyreAsked,
  units: UnitSystem = 'metric',
): string {
  const tyre = tyreOf(size);
  const old = against === undefined ? undefined : tyreOf(against);
  if (isLength(of)) {
    return valueText(LENGTHS[of](tyre) - (old ? LENGTHS[of](old) : 0), 'length', units);
  }
  switch (of) {
    case 'size':
      return designation(tyre);
    case 'turns':
      return writeFixed(1000 / rollingCircumference(tyre).value, 0);
    case 'shown':
      return valueText(toSI(shown_kmh, 'km/h'), 'speed', units);
    case 'share':
      if (!old) break;
      return `${writeFixed(fromSI(compareTyres(old, tyre).relative, 'percent'), 1)}\u202f%`;
    case 'trueSpeed':
      if (!old) break;
      return valueText(trueSpeed(toSI(shown_kmh, 'km/h'), old, tyre), 'speed', units);
  }
  throw new Error(
    `<TyreSize of="${of}" />: allowed are ${[...Object.keys(LENGTHS), ...OTHERS].join(', ')}; share and trueSpeed need against`,
  );
}

function tyreOf(size: string): Tyre {
  const read = parseTyre(size);
  if (read.ok) return read.value;
  throw new Error(`<TyreSize size="${size}" />: ${read.faults.map(faultLine).join('; ')}`);
}
