import { found, unreadable, type Numeral } from './numeral.ts';

const FRACTION = /^(?:(?<whole>\d{1,9})[ -])?(?<above>\d{1,9}) ?\/ ?(?<below>\d{1,9})(?!\d)/;

/**
 * A vulgar fraction at the start of a text without sign, as inch rules and wrenches have it: `3/4`,
 * `1 3/4`, `1-3/4`. Undefined where there is none.
 */
export function fractionAtStart(text: string): Numeral | undefined {
  const match = FRACTION.exec(text);
  if (match === null) return undefined;
  const whole = match.groups?.['whole'];
  const above = Number(match.groups?.['above']);
  const below = Number(match.groups?.['below']);
  if (below === 0) {
    return unreadable('divides by 0', 'a fraction with another number below the stroke');
  }
  if (whole !== undefined && above >= below) {
    return unreadable(
      `has ${above}/${below} behind a whole number`,
      'a fraction smaller than 1 there, as in 1 3/4',
    );
  }
  return found([Number(whole ?? 0) + above / below], text.slice(match[0].length));
}
