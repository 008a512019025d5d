/** The same function, which keeps its last result: one item is asked about many times before the next one comes. */
export function kept<Item extends object, Value>(of: (item: Item) => Value): (item: Item) => Value {
  let last: { readonly item: Item; readonly value: Value } | undefined;
  return (item) => {
    if (last?.item !== item) last = { item, value: of(item) };
    return last.value;
  };
}
