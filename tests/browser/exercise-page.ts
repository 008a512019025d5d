import type { Locator } from '@playwright/test';
import { fromSI } from '#core/units/convert.ts';
import type { DrawnPart } from '#exercises/exercise.ts';

/** Fills in one part of an exercise: the size as its unit has it, and the word that carries the sign. */
export async function fillPart(
  form: Locator,
  index: number,
  part: DrawnPart,
  value: number,
): Promise<void> {
  const { unit, decimals, quantity } = part.definition;
  const place = form.locator('.parts > li').nth(index);
  await place.getByRole('textbox').fill(Math.abs(fromSI(value, unit)).toFixed(decimals));
  const word = value < 0 ? quantity.negative : quantity.positive;
  if (word !== undefined) await place.getByRole('radio', { name: word }).check();
}
