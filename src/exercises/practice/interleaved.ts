import { confusableWith } from './confusable.ts';
import type { ListedKind } from './listed-kind.ts';

/**
 * The chosen kinds in an order that mixes them: no kind twice running where that can be avoided, kinds that are
 * taken for each other side by side, and lessons apart otherwise.
 *
 * @param chosen with the most urgent one first; a kind may be there more than once
 */
export function interleaved<Kind extends Pick<ListedKind, 'id' | 'lesson'>>(
  chosen: readonly Kind[],
): readonly Kind[] {
  const left = [...chosen];
  const order: Kind[] = [];
  while (left.length > 0) {
    const last = order.at(-1);
    const fits = left.filter((kind) => leavesAWay(left, kind, last));
    const [next] = (fits.length > 0 ? fits : left).toSorted(
      (a, b) => strain(a, last, order) - strain(b, last, order),
    );
    if (!next) break;
    left.splice(left.indexOf(next), 1);
    order.push(next);
  }
  return order;
}

/** Whether the rest can still be put in order without a kind twice running once this one is next. */
function leavesAWay<Kind extends Pick<ListedKind, 'id'>>(
  left: readonly Kind[],
  next: Kind,
  last: Kind | undefined,
): boolean {
  if (next.id === last?.id) return false;
  const rest = left.toSpliced(left.indexOf(next), 1);
  return rest.every(({ id }) => {
    const count = rest.filter((kind) => kind.id === id).length;
    const places = id === next.id ? Math.floor(rest.length / 2) : Math.ceil(rest.length / 2);
    return count <= places;
  });
}

/** How little a kind suits the place after the last one; equal strain keeps the order of urgency. */
function strain<Kind extends Pick<ListedKind, 'id' | 'lesson'>>(
  { id, lesson }: Kind,
  last: Kind | undefined,
  order: readonly Kind[],
): number {
  if (!last) return 0;
  // A pair that has already lain side by side need not do so again.
  const isPair = confusableWith(last.id).includes(id) && !order.some((kind) => kind.id === id);
  if (isPair) return -1;
  return id === last.id ? 2 : lesson === last.lesson ? 1 : 0;
}
