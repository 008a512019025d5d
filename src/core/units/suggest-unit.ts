import { convertible, type Dimension } from './dimension.ts';
import { SPELLINGS, spelling } from './find-unit.ts';
import { UNITS, type UnitName } from './units.ts';

/**
 * The unit that a mistyped name was probably meant for, or undefined where nothing is near: at most
 * one letter wrong in a short name, two in a long one. Only units that the field can take.
 *
 * @param written as typed
 * @param wanted the dimension of the field it was typed in
 */
export function suggestUnit(written: string, wanted: Dimension): UnitName | undefined {
  const typed = spelling(written);
  const most = typed.length > 4 ? 2 : 1;
  let best: { readonly name: UnitName; readonly cost: number } | undefined;
  for (const [key, names] of SPELLINGS) {
    // A name of one letter is within one letter of every other: no ground for a suggestion.
    if (key.length < 2) continue;
    const letters = lettersWrong(typed, key);
    if (letters > most) continue;
    for (const name of names) {
      const { dimension } = UNITS[name];
      if (!convertible(dimension, wanted)) continue;
      // A distance field would rather hear of km than of mm.
      const cost = letters + (dimension === wanted ? 0 : most);
      if (best === undefined || cost < best.cost) best = { name, cost };
    }
  }
  return best?.name;
}

/**
 * How many letters must be put in, left out, replaced or swapped with their neighbour to turn one word
 * into another (optimal string alignment distance; from memory).
 */
export function lettersWrong(a: string, b: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1] ? 0 : 1;
      const swapped =
        row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      current[column] = Math.min(
        at(last, column) + 1,
        at(current, column - 1) + 1,
        at(last, column - 1) + same,
        swapped ? at(beforeLast, column - 2) + 1 : Infinity,
      );
    }
    beforeLast = last;
    last = current;
  }
  return at(last, b.length);
}

const at = (numbers: readonly number[], place: number): number => numbers[place] ?? Infinity;
