import type { Earlier } from '../kind.ts';

/** The same function, which keeps its last result: one item is asked about many times before the next one comes. */
export function kept<Item extends object, Value>(of: (item: Item) => Value): (item: Item) => Value {
  let last: { readonly item: Item; readonly value: Value } | undefined;
  return (item) => {
    if (last?.item !== item) last = { item, value: of(item) };
    return last.value;
  };
}

/** The same for what goes on from earlier values: an answer and the slips that start from it ask for one number. */
export function keptStep<Item extends object, Value>(
  of: (item: Item, earlier: Earlier) => Value,
): (item: Item, earlier: Earlier) => Value {
  let last: readonly [item: Item, earlier: Earlier, count: number, value: Value] | undefined;
  return (item, earlier) => {
    // A list of earlier values may grow from part to part.
    if (last?.[0] !== item || last[1] !== earlier || last[2] !== earlier.length)
      last = [item, earlier, earlier.length, of(item, earlier)];
    return last[3];
  };
}
