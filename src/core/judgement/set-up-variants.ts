import { radians } from '../angle.ts';
import type { Sides } from '../axle.ts';
import { failure, success, type Fault, type Outcome } from '../fault.ts';
import { parseTyre } from '../tyre/parse-tyre.ts';
import { toSI } from '../units/convert.ts';
import type { VariantDocument, WheelChangeDocument } from './bench-document.ts';
import type { WheelChange } from './fitted-car.ts';

/** The changes of a variant at both wheels: one and the same where the document has one for both. */
export function changesOf(variant: VariantDocument, path: string): Outcome<Sides<WheelChange>> {
  if ('both' in variant) {
    const both = changeOf(variant.both, `${path}.both`);
    return both.ok ? success({ left: both.value, right: both.value }) : both;
  }
  const left = changeOf(variant.left, `${path}.left`);
  const right = changeOf(variant.right, `${path}.right`);
  if (left.ok && right.ok) return success({ left: left.value, right: right.value });
  const faults: Fault[] = [...(left.ok ? [] : left.faults), ...(right.ok ? [] : right.faults)];
  return failure(...faults);
}

function changeOf(document: WheelChangeDocument, path: string): Outcome<WheelChange> {
  const tyre = document.tyre === undefined ? undefined : parseTyre(document.tyre, `${path}.tyre`);
  if (tyre !== undefined && !tyre.ok) return tyre;
  const { inset_mm, rimWidth_in, wheelThickness_mm } = document;
  return success({
    spacer: toSI(document.spacer_mm ?? 0, 'mm'),
    inset: inset_mm === undefined ? undefined : toSI(inset_mm, 'mm'),
    rimWidth: rimWidth_in === undefined ? undefined : toSI(rimWidth_in, 'in'),
    wheelThickness: wheelThickness_mm === undefined ? undefined : toSI(wheelThickness_mm, 'mm'),
    tyre: tyre?.value,
    camberAtUpperPivot: radians(document.camberAtUpperPivot_deg ?? 0),
    camberAtCarrier: radians(document.camberAtCarrier_deg ?? 0),
  });
}
