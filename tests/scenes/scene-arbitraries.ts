import fc from 'fast-check';
import type { CornerModel } from '#core/car/car.ts';
import type { QuantityId } from '#core/quantities.ts';
import { PART_NAMES, type CornerLook, type PartName } from '#scenes/corner/corner-scene.ts';
import type { Guesses } from '#scenes/corner/measure-place.ts';
import type { Closeness } from '#scenes/corner/windows.ts';
import {
  isLoadId,
  LOAD_IDS,
  PARAMETER_IDS,
  PARAMETERS,
  type ParameterId,
} from '#scenes/parameters.ts';
import { VIEWS, type View } from '#scenes/plane.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { TRAINING_CARS } from '../training-cars.ts';

/** The corners of the training cars, by name: `linnet, left`. */
const MODELS: ReadonlyMap<string, CornerModel> = new Map(
  TRAINING_CARS.flatMap(({ id, left, right }) => [
    [`${id}, left`, left],
    [`${id}, right`, right],
  ]),
);

export const MODEL_NAMES: readonly string[] = [...MODELS.keys()];

export function modelNamed(name: string): CornerModel {
  const model = MODELS.get(name);
  if (model) return model;
  throw new RangeError(`no corner is called ${name}`);
}

/** The quantities that a view can dimension. */
export const MEASURED = {
  front: ['inclination', 'camber', 'scrubRadius', 'spindleOffset', 'lift'],
  side: ['caster', 'trail', 'casterOffsetAtCentre', 'lift'],
  top: ['scrubRadius', 'trail', 'spindleOffset', 'casterOffsetAtCentre'],
} as const satisfies Record<View, readonly QuantityId[]>;

/** By name, so that a report of a broken law can be read. */
export const anyModelName = fc.constantFrom(...MODEL_NAMES);
export const anyView = fc.constantFrom<View>(...VIEWS);
export const anyCloseness = fc.constantFrom<Closeness>('whole', 'road', 'hub');

/** Any value of a parameter within its bounds. */
export const anyValue = (id: ParameterId): fc.Arbitrary<number> =>
  fc.double({ min: PARAMETERS[id].least, max: PARAMETERS[id].most, noNaN: true });

const anySettingOf = (ids: readonly ParameterId[], most: number): fc.Arbitrary<Partial<Setting>> =>
  fc
    .uniqueArray(fc.constantFrom(...ids), { maxLength: most })
    .chain((set) => fc.record(Object.fromEntries(set.map((id) => [id, anyValue(id)]))));

/** A corner changed and steered in a few ways at once, under one load or none. */
export const anySetting: fc.Arbitrary<Setting> = fc
  .tuple(
    anySettingOf(
      PARAMETER_IDS.filter((id) => !isLoadId(id)),
      4,
    ),
    anySettingOf(LOAD_IDS, 1),
  )
  .map(([changes, loads]) => adjusted(AS_IT_STANDS, { ...changes, ...loads }));

/** A corner changed in a few ways, its wheel straight ahead. */
export const anySettingAhead = anySetting.map((setting): Setting => ({ ...setting, steer: 0 }));

/** A look at a corner in a view, with no more in it than a reader can take in at once. */
const anyLookIn = (view: View): fc.Arbitrary<CornerLook> =>
  fc
    .record({
      closeness: anyCloseness,
      measures: fc.uniqueArray(fc.constantFrom<QuantityId>(...MEASURED[view]), { maxLength: 3 }),
      names: fc.uniqueArray(fc.constantFrom(...(Object.keys(PART_NAMES) as PartName[])), {
        maxLength: 4,
      }),
      handles: fc.uniqueArray(fc.constantFrom(...PARAMETER_IDS), { maxLength: 3 }),
      units: fc.constantFrom('metric', 'us'),
      guess: fc.option(fc.double({ min: -0.1, max: 0.1, noNaN: true })),
    })
    .map(({ guess, ...look }) => ({ ...look, view, guesses: guessed(look.measures, guess) }));

export const anyLook = anyView.chain(anyLookIn);

const guessed = ([first]: readonly QuantityId[], guess: number | null): Guesses =>
  first === undefined || guess === null ? {} : { [first]: guess };
