import { failure, success, type Outcome } from '#core/fault.ts';
import { benchIn, hasBench } from '#core/judgement/bench-link.ts';
import type { BenchDocument, WheelChangeDocument } from '#core/judgement/bench-document.ts';
import { designation } from '#core/tyre/designation.ts';
import { nearestSize } from '#core/tyre/nearest-size.ts';
import { parseTyre } from '#core/tyre/parse-tyre.ts';
import { withoutAbsent } from '#core/document/without-absent.ts';
import { fromSI, toSI } from '#core/units/convert.ts';
import { readSettingText } from '#scenes/setting-text.ts';
import type { Setting } from '#scenes/setting.ts';

/** A training car as the bench takes it. */
export interface TrainingCar {
  readonly id: string;
  readonly document: BenchDocument;
}

/** The bench that an address asks for; undefined where it asks for none. */
export function askedIn(
  { hash, search }: Pick<Location, 'hash' | 'search'>,
  cars: readonly TrainingCar[],
): Outcome<BenchDocument> | undefined {
  if (hasBench(hash)) return benchIn(hash);
  const asked = new URLSearchParams(search);
  const id = asked.get('car');
  if (id === null) return undefined;
  const car = cars.find((one) => one.id === id);
  if (car === undefined) {
    const allowed = cars.map((one) => one.id).join(', ');
    return failure({ path: 'car', wrong: `is “${id.slice(0, 40)}”`, allowed });
  }
  const setting = readSettingText(asked.get('set') ?? '');
  return setting.ok ? success(withSetting(car.document, setting.value)) : setting;
}

/** The car with what a figure’s setting does to its wheels as a change; what driving does comes and goes, and is left out. */
function withSetting(document: BenchDocument, setting: Setting): BenchDocument {
  const change = changeOf(document, setting);
  const name =
    setting.radius === 0
      ? 'As in the figure'
      : change.tyre === undefined
        ? 'As in the figure, but for the tyre: no size is so near'
        : 'As in the figure, with the nearest size of tyre';
  if (Object.keys(change).length === 0 && setting.radius === 0) return document;
  return { ...document, variants: [{ name, both: change }] };
}

/** The bench goes by what is marked on a tyre: the size that comes nearest to the radius of the figure; none where it is the car’s. */
function tyreOf({ car }: BenchDocument, { radius }: Setting): string | undefined {
  const own = parseTyre(car.tyre);
  if (radius === 0 || !own.ok) return undefined;
  const size = nearestSize(own.value, 1 + radius / car.corner.wheel.loadedRadius_mm);
  return size === own.value ? undefined : designation(size);
}

function changeOf(document: BenchDocument, setting: Setting): WheelChangeDocument {
  const { car } = document;
  const { spacer, inset, wheelWidth, camberAtTop, camberAtCarrier } = setting;
  const own = (id: 'inset_mm' | 'rimWidth_in'): number => car.values[id]?.value ?? 0;
  const otherWheel = inset !== 0 || wheelWidth !== 0;
  return withoutAbsent({
    spacer_mm: spacer > 0 ? spacer : undefined,
    // A spacer of less than nothing is a wheel of more inset.
    inset_mm: otherWheel || spacer < 0 ? own('inset_mm') + inset - Math.min(0, spacer) : undefined,
    tyre: tyreOf(document, setting),
    rimWidth_in: wheelWidth === 0 ? undefined : own('rimWidth_in') + inInches(wheelWidth),
    camberAtUpperPivot_deg: camberAtTop === 0 ? undefined : camberAtTop,
    camberAtCarrier_deg: camberAtCarrier === 0 ? undefined : camberAtCarrier,
  });
}

/** To a hundredth: what is cast into wheels is no closer. */
const inInches = (length_mm: number): number =>
  Number(fromSI(toSI(length_mm, 'mm'), 'in').toFixed(2));
