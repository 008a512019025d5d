import { failure, success, type Outcome } from '#core/fault.ts';
import { benchIn, hasBench } from '#core/judgement/bench-link.ts';
import type { BenchDocument, WheelChangeDocument } from '#core/judgement/bench-document.ts';
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
  if (Object.keys(change).length === 0) return document;
  return { ...document, variants: [{ name: 'As in the figure', both: change }] };
}

function changeOf({ car }: BenchDocument, setting: Setting): WheelChangeDocument {
  const { spacer, inset, wheelWidth, camberAtTop, camberAtCarrier } = setting;
  const own = (id: 'inset_mm' | 'rimWidth_in'): number => car.values[id]?.value ?? 0;
  const otherWheel = inset !== 0 || wheelWidth !== 0;
  return withoutAbsent({
    spacer_mm: spacer > 0 ? spacer : undefined,
    // A spacer of less than nothing is a wheel of more inset.
    inset_mm: otherWheel || spacer < 0 ? own('inset_mm') + inset - Math.min(0, spacer) : undefined,
    rimWidth_in: wheelWidth === 0 ? undefined : own('rimWidth_in') + inInches(wheelWidth),
    camberAtUpperPivot_deg: camberAtTop === 0 ? undefined : camberAtTop,
    camberAtCarrier_deg: camberAtCarrier === 0 ? undefined : camberAtCarrier,
  });
}

/** To a hundredth: what is cast into wheels is no closer. */
const inInches = (length_mm: number): number =>
  Number(fromSI(toSI(length_mm, 'mm'), 'in').toFixed(2));
