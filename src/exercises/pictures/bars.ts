import type { Road } from '../kind.ts';
import type { Bar, BarsPicture } from './picture.ts';

/** How many times higher than the highest of the others a wrong bar may be, and the least difference that is seen. */
const MOST = 4;
const LEAST = 0.03;

/** Where a wrong value ends, beside the right ones; nothing where it cannot be seen. */
export function wrongBar(
  title: string,
  bars: readonly Bar[],
  { value, answer }: Road,
): BarsPicture | undefined {
  const most = Math.max(...bars.map((bar) => Math.abs(bar.value)));
  if (value === 0 || Math.abs(value) > MOST * most || Math.abs(value - answer) < LEAST * most)
    return undefined;
  return { scene: 'bars', title, bars: [...bars, { says: 'yours', value, wrong: true }] };
}
