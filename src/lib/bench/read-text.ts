import { failure, success, type Outcome } from '#core/fault.ts';
import { designation } from '#core/tyre/designation.ts';
import { parseTyre } from '#core/tyre/parse-tyre.ts';

/** A name of so many letters at most; a car and a change have to be called something. */
export const readName =
  (most: number) =>
  (text: string): Outcome<string> => {
    const name = text.trim();
    if (name.length >= 1 && name.length <= most) return success(name);
    return failure({
      path: '',
      wrong: name === '' ? 'is empty' : `has ${name.length} letters`,
      allowed: `a name of 1 to ${most} letters`,
    });
  };

export const CAR_NAME_LETTERS = 80;
export const VARIANT_NAME_LETTERS = 60;

/** A car’s name with something after it, as long as names may be. */
export const namedAfter = (name: string, more: string): string =>
  name.slice(0, CAR_NAME_LETTERS - more.length) + more;

/** A tyre as it is marked on its sidewall, written as tables have it: `205/55 R16 91V`. */
export function readTyre(text: string): Outcome<string> {
  const tyre = parseTyre(text, '');
  return tyre.ok ? success(designation(tyre.value)) : tyre;
}

/** The same where nothing typed means that the tyre stays. */
export const readTyreIfAny = (text: string): Outcome<string | undefined> =>
  text.trim() === '' ? success(undefined) : readTyre(text);
