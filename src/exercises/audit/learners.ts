import { fromSI, toSI } from '#core/units/convert.ts';
import type { DrawnPart, Exercise } from '../exercise.ts';
import { isList } from '../forms/form.ts';
import { mostOf } from '../forms/read-list-entry.ts';
import { followed, own, type Entry } from '../own-road.ts';
import type { Random } from '../random.ts';
import { asWritten } from '../tolerance.ts';

/** Works every part with the right method, and writes each value down in a way of their own. */
export function carefulEntries(
  { parts }: Exercise,
  write: (part: DrawnPart, value: number) => number,
): readonly number[] {
  const entries: number[] = [];
  for (const part of parts) entries.push(write(part, part.follow(entries)));
  return entries;
}

/** Rounds to the decimals that are asked for. */
export const asAsked = (part: DrawnPart, value: number): number =>
  asWritten(part.definition, value);

/** An entry without any method: of a list any of its entries, of a scale any of its steps. */
export function guessed(
  { definition: { unit, quantity, form } }: DrawnPart,
  random: Random,
): number {
  if (isList(form)) return random.integer(1, mostOf(form));
  if (form) {
    const { least, most, step } = form.scale;
    return toSI(random.integer(Math.ceil(least / step), Math.floor(most / step)) * step, unit);
  }
  return quantity.kind === 'angle'
    ? ((random.integer(-200, 200) / 10) * Math.PI) / 180
    : random.integer(-1500, 1500) / (unit === 'mm' ? 10_000 : 10);
}

/** Rounds to three significant digits. */
export function threeDigits({ definition: { unit } }: DrawnPart, value: number): number {
  return toSI(Number(fromSI(value, unit).toPrecision(3)), unit);
}

/** True entries up to a part, a given entry there, and the right method on one's own values from there on, or on the true ones where those lead nowhere. */
export function entriesAfter({ parts }: Exercise, index: number, entry: number): readonly Entry[] {
  const entries: Entry[] = [];
  for (const [i, part] of parts.entries()) {
    if (i < index) entries.push(part.answer);
    else if (i === index) entries.push(entry);
    else entries.push(asAsked(part, followed(part, own(parts, entries, i)) ?? part.answer));
  }
  return entries;
}
