import { numberText, SHOWN, unitText, type UnitSystem } from '#core/display.ts';
import { problemMessage } from '#core/quantity-reader/problem-message.ts';
import { readQuantity } from '#core/quantity-reader/read-quantity.ts';
import { storedFromSI, storedSI } from '#scenes/parameter-text.ts';
import type { Parameter } from '#scenes/parameter.ts';

/** What somebody typed into a control: the value in millimetres, degrees or newtons, or what is wrong with it. */
export type TypedNumber =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly problem: string };

/** Reads a number typed into the field of a control, in any unit of its kind, within the control's bounds. */
export function readTyped(
  text: string,
  { kind, least, most }: Pick<Parameter, 'kind' | 'least' | 'most'>,
  units: UnitSystem,
): TypedNumber {
  const reading = readQuantity(text, SHOWN[units][kind].unit);
  if (reading.kind !== 'quantity') return { ok: false, problem: problemMessage(reading) };
  const value = storedFromSI(kind, reading.si);
  if (value >= least - 1e-9 && value <= most + 1e-9) return { ok: true, value };
  const bounds =
    [least, most].map((bound) => numberText(storedSI(kind, bound), kind, units)).join(' to ') +
    unitText(kind, units);
  return {
    ok: false,
    problem: `${text.trim()} is outside what this figure can show; allowed: ${bounds}.`,
  };
}
