import { failure, success, type Outcome } from '#core/fault.ts';
import { SHEET_LIMITS } from '#exercises/sheet/sheet.ts';

/** As many papers as anybody prints at once. */
const MOST = 200;

/** Numbers as people write them: `1-24`, `3, 7, 12-15`. */
export function numbersIn(text: string): Outcome<readonly number[]> {
  const numbers = new Set<number>();
  for (const piece of text.split(/[,;\s]+/).filter(Boolean)) {
    const [, first, last = first] = /^(\d+)(?:[-–](\d+))?$/.exec(piece) ?? [];
    const [from, to] = [Number(first), Number(last)];
    const { least, most } = SHEET_LIMITS.number;
    if (!(from >= least && to <= most && from <= to && to - from < MOST)) return wrong(piece);
    for (let number = from; number <= to; number++) numbers.add(number);
  }
  if (numbers.size === 0) return wrong(text);
  if (numbers.size > MOST) return wrong(`${numbers.size} numbers`);
  return success([...numbers].sort((a, b) => a - b));
}

const wrong = (what: string): Outcome<never> =>
  failure({
    path: 'numbers',
    wrong: what.trim() === '' ? 'is empty' : `has “${what}” in it`,
    allowed: `numbers and ranges such as 1-24 or 3, 7, 12-15; up to ${MOST} of them`,
  });
