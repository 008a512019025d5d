import type { VariantDocument, WheelChangeDocument } from '#core/judgement/bench-document.ts';
import type { CarSetup } from '#core/judgement/bench-setup.ts';
import { withoutAbsent } from '#core/document/without-absent.ts';
import { fromSI } from '#core/units/convert.ts';

/** Which wheel a part of a variant is about. */
export type ChangePlace = 'both' | 'left' | 'right';

export const placesOf = (variant: VariantDocument): readonly ChangePlace[] =>
  'both' in variant ? ['both'] : ['left', 'right'];

/** What is done at a place of a variant. */
export function changeAt(variant: VariantDocument, place: ChangePlace): WheelChangeDocument {
  if ('both' in variant) return variant.both;
  return place === 'right' ? variant.right : variant.left;
}

/** The variant with something else done at a place. */
export function withChange(
  variant: VariantDocument,
  place: ChangePlace,
  change: WheelChangeDocument,
): VariantDocument {
  const kept = withoutAbsent(change);
  if ('both' in variant) return { name: variant.name, both: kept };
  return place === 'right' ? { ...variant, right: kept } : { ...variant, left: kept };
}

/** The variant with one change for both wheels, or one for each. */
export function sided(variant: VariantDocument, apart: boolean): VariantDocument {
  const { name } = variant;
  if ('both' in variant) return apart ? { name, left: variant.both, right: variant.both } : variant;
  return apart ? variant : { name, both: variant.left };
}

/** A wheel of another width has an inset of its own: that of the present wheel, until somebody says another. */
export function withInset(
  change: WheelChangeDocument,
  { known }: Pick<CarSetup, 'known'>,
): WheelChangeDocument {
  if (change.rimWidth_in === undefined || change.inset_mm !== undefined) return change;
  return { ...change, inset_mm: Math.round(fromSI(known.inset_mm.value, 'mm')) };
}

/** A name that no other change has: `Change 2`. */
export function freshName(variants: readonly VariantDocument[]): string {
  const taken = new Set(variants.map(({ name }) => name));
  for (let number = 1; ; number++) {
    const name = `Change ${number}`;
    if (!taken.has(name)) return name;
  }
}
