import type { UnitSystem } from '#core/display.ts';
import type { VariantDocument, WheelChangeDocument } from '#core/judgement/bench-document.ts';
import { changeAt, placesOf } from './variant-edit';
import { withUnit } from './entry';

/** What is done in a variant, a line for both wheels or one for each: `spacer 15 mm, tyre 215/50 R17`. */
export const variantLines = (variant: VariantDocument, system: UnitSystem): readonly string[] =>
  placesOf(variant).map((place) => {
    const whole = changeText(changeAt(variant, place), system);
    return place === 'both' ? whole : `${place} wheel: ${whole}`;
  });

function changeText(change: WheelChangeDocument, system: UnitSystem): string {
  const length = (mm: number): string => withUnit(mm, 'mm', system);
  const angle = (deg: number): string => withUnit(deg, 'deg', system);
  const parts = [
    change.spacer_mm !== undefined && `spacer ${length(change.spacer_mm)}`,
    change.rimWidth_in !== undefined && `rim ${withUnit(change.rimWidth_in, 'in', system)} wide`,
    change.inset_mm !== undefined && `wheel with an inset of ${length(change.inset_mm)}`,
    change.wheelThickness_mm !== undefined &&
      `wheel ${length(change.wheelThickness_mm)} thick at its seat`,
    change.tyre !== undefined && `tyre ${change.tyre}`,
    change.camberAtUpperPivot_deg !== undefined &&
      `camber ${angle(change.camberAtUpperPivot_deg)} at the top`,
    change.camberAtCarrier_deg !== undefined &&
      `camber ${angle(change.camberAtCarrier_deg)} at the carrier`,
  ].filter((part) => part !== false);
  return parts.length === 0 ? 'nothing' : parts.join(', ');
}
