import type { Sides } from '../axle.ts';
import { inMetres } from '../document/edge-units.ts';
import { RANGES } from '../document/ranges.ts';
import { expanded, slopesOf, combinedOf } from '../uncertainty/linear.ts';
import type { CarSetup } from './bench-setup.ts';
import { insetLikeOld, lengthsForScrub, type Band, type LikeOld } from './find-backwards.ts';
import type { WheelChange } from './fitted-car.ts';
import { madeChange } from './made-change.ts';
import { isAlike, modelOf, slotsOf, valuesOf } from './model.ts';
import { standingCorners } from './standing-corners.ts';
import type { Change } from '../change.ts';
import type { Corner } from '../corner.ts';
import { measure } from '../geometry.ts';

/** Which length is asked for: a spacer’s thickness, a wheel’s inset, or a loaded radius. In metres, as the part has it. */
export type AskedLength = 'spacer' | 'inset' | 'loadedRadius';

/** Lengths that keep the scrub radius in a band. */
export interface LengthAnswer {
  /** By the best estimates. */
  readonly best: Band;
  /** With the whole ±2u of the scrub radius inside the band; missing where the band is too narrow for what is known. */
  readonly sure?: Band;
}

/**
 * Which spacer, inset or loaded radius keeps the scrub radius of a wheel within a band, whatever else is done at that
 * wheel: the asked length takes the place of that of the change.
 *
 * @returns undefined where no such length does: a spacer would have to be thinner than nothing, a wheel smaller than any
 */
export function lengthForScrub(
  setup: CarSetup,
  changes: Sides<WheelChange>,
  side: 'left' | 'right',
  asked: AskedLength,
  band: Band,
): LengthAnswer | undefined {
  const { corner, made, own } = standing(setup, changes, side);
  const lengths = (within: Band): Band | undefined => {
    const found = lengthsForScrub(corner, asked, within, { ...made, [asked]: 0 });
    return (
      found && bounded(asked, { least: found.least + own[asked], most: found.most + own[asked] })
    );
  };
  const best = lengths(band);
  if (best === undefined) return undefined;
  const doubt = expanded(scrubDoubt(setup, changes, side));
  const narrow = { least: band.least + doubt, most: band.most - doubt };
  const sure = narrow.least <= narrow.most ? lengths(narrow) : undefined;
  return { best, ...(sure && { sure }) };
}

/** The loaded radius with which the scrub radius is again what it was before the change, in metres; undefined where no wheel has it. */
export function radiusForOldScrub(
  setup: CarSetup,
  changes: Sides<WheelChange>,
  side: 'left' | 'right',
): number | undefined {
  const { corner, made, own } = standing(setup, changes, side);
  const { scrubRadius } = measure(corner);
  const found = lengthsForScrub(
    corner,
    'loadedRadius',
    { least: scrubRadius, most: scrubRadius },
    { ...made, loadedRadius: 0 },
  );
  const radius = found && found.least + own.loadedRadius;
  return radius !== undefined && radius >= LEAST.loadedRadius ? radius : undefined;
}

/** With which inset a wheel of another width sits like the car’s own, in metres. */
export const insetAnswers = ({ inputs }: CarSetup, newRimWidth: number, spacer = 0): LikeOld => {
  const value = valuesOf(inputs.map((input) => input.value));
  const old = { inset: value('inset_mm'), rimWidth: value('rimWidth_in') };
  return insetLikeOld(old, newRimWidth, spacer);
};

interface Standing {
  readonly corner: Corner;
  readonly made: Change;
  /** What a difference of nought stands for: no spacer, the wheel’s own inset, the car’s own radius. */
  readonly own: Readonly<Record<AskedLength, number>>;
}

/** The corner by the best estimates, and what a change makes of it. */
function standing(
  { car, inputs }: CarSetup,
  changes: Sides<WheelChange>,
  side: 'left' | 'right',
): Standing {
  const value = valuesOf(inputs.map((input) => input.value));
  const corner = standingCorners(car, value)[side];
  return {
    corner,
    made: madeChange(car, value, changes[side], corner.loadedRadius),
    own: { spacer: 0, inset: value('inset_mm'), loadedRadius: corner.loadedRadius },
  };
}

/** The thinnest and the smallest that there are: no spacer, and the least radius that documents have; insets may be anything. */
const LEAST: Readonly<Record<AskedLength, number>> = {
  spacer: 0,
  inset: -Infinity,
  loadedRadius: inMetres(RANGES.wheelRadius.least),
};

function bounded(asked: AskedLength, { least, most }: Band): Band | undefined {
  return most < LEAST[asked] ? undefined : { least: Math.max(LEAST[asked], least), most };
}

/** Standard uncertainty of the scrub radius after a change, in metres. */
function scrubDoubt(
  { car, inputs }: CarSetup,
  changes: Sides<WheelChange>,
  side: 'left' | 'right',
): number {
  const alike = isAlike(car, changes);
  const at = slotsOf(alike).findIndex(
    ({ id, place }) => id === 'scrubRadius' && place === (alike ? 'left' : side),
  );
  const { values, contributions } = slopesOf(modelOf(car, changes, alike), inputs);
  return combinedOf(
    values[at] ?? NaN,
    contributions.map((row) => row[at] ?? NaN),
  ).standard;
}
