import type { DrawnPart, DrawnSlip, Exercise } from './exercise.ts';
import { isList } from './forms/form.ts';
import { reaches } from './forms/setting.ts';
import { followed, own, ownValue, type Entry } from './own-road.ts';
import { halfDigit, within, withMargin } from './tolerance.ts';

export { own, type Entry };

export type Verdict =
  /** Agrees with the answer. */
  | 'right'
  /** Right method on the learner's own earlier value. */
  | 'follow-on'
  /** Left out, but a later part shows that it was known. */
  | 'implied'
  /** Fits, but may be a guess: nothing after it bears it out. */
  | 'alone'
  | 'slip'
  | 'unknown'
  | 'missing';

/** The mark of one part. */
export interface PartMark {
  readonly verdict: Verdict;
  readonly earned: number;
  readonly possible: number;
  /** The wrong road taken, where it is a known one. */
  readonly slip?: DrawnSlip;
  /** Whether it was taken from the learner's own earlier values: only so, or more nearly so, does it end at the entry. */
  readonly fromOwn?: true;
}

export interface Marks {
  readonly parts: readonly PartMark[];
  readonly earned: number;
  readonly possible: number;
}

/**
 * Grades the entries of an exercise part by part. A part is right if it agrees with the answer or with what
 * the learner's own earlier values come to, so a slip costs once; a right later part vouches for parts left out.
 */
export function grade({ parts }: Exercise, entries: readonly Entry[]): Marks {
  const marks: PartMark[] = [];
  const road: number[] = [];
  let isOff = false;
  for (const part of parts) {
    const entry = entries[road.length];
    const mark = gradePart(part, entry, road);
    // Following on from values that are all right is simply right.
    marks.push(mark.verdict === 'follow-on' && !isOff ? { ...mark, verdict: 'right' } : mark);
    isOff ||= mark.verdict === 'slip' || mark.verdict === 'unknown';
    road.push(ownValue(part, entry, road));
  }
  const settled = vouched(parts, borneOut(parts, marks));
  let earned = 0;
  let possible = 0;
  for (const mark of settled) {
    earned += mark.earned;
    possible += mark.possible;
  }
  return { parts: settled, earned, possible };
}

/** Grades one entry, given the learner's own values before it (see `own`). */
export function gradePart(part: DrawnPart, entry: Entry, earlier: readonly number[]): PartMark {
  const possible = part.definition.weight ?? 1;
  if (entry === undefined) return { verdict: 'missing', earned: 0, possible };
  if (fits(part, entry)) return { verdict: 'right', earned: possible, possible };
  if (follows(part, entry, earlier)) return { verdict: 'follow-on', earned: possible, possible };
  const taken = slipTaken(part, entry, earlier);
  return taken
    ? { verdict: 'slip', earned: 0, possible, ...taken }
    : { verdict: 'unknown', earned: 0, possible };
}

/** Whether an entry agrees with the answer. Of a setting the core says what it comes to. */
const fits = ({ tolerance, answer, definition: { form } }: DrawnPart, entry: number): boolean =>
  form?.kind === 'set' ? reaches(form, entry, form.goal) : within(tolerance, entry, answer);

/** Whether an entry that does not fit is what the learner's own earlier values come to. */
function follows(part: DrawnPart, entry: number, earlier: readonly number[]): boolean {
  // Where nothing came before, that is the answer.
  if (earlier.length === 0) return false;
  const { form } = part.definition;
  if (form?.kind === 'set') return reaches(form, entry, form.target(earlier));
  const value = followed(part, earlier);
  return value !== undefined && within(scaled(part, value), entry, value);
}

/**
 * The tolerance on the learner's own road: the same share of a larger value. Off the true road a sum of printed
 * numbers may have to be rounded too.
 */
function scaled({ answer, tolerance, definition }: DrawnPart, value: number): number {
  // Letters stay as far apart as they are.
  if (definition.form) return tolerance;
  const share = tolerance * Math.max(1, Math.abs(value / answer));
  const isOff = !within(tolerance, value, answer);
  return isOff ? Math.max(share, withMargin(halfDigit(definition))) : share;
}

/** The known wrong road that ends nearest to the entry, starting from the true earlier values or from the learner's. */
function slipTaken(
  { slips, tolerance, definition }: DrawnPart,
  entry: number,
  earlier: readonly number[],
): Pick<PartMark, 'slip' | 'fromOwn'> | undefined {
  let nearest: Pick<PartMark, 'slip' | 'fromOwn'> | undefined;
  let least = Infinity;
  const room = Math.max(tolerance, withMargin(halfDigit(definition)));
  const consider = (end: number, road: Pick<PartMark, 'slip' | 'fromOwn'>): void => {
    const miss = Math.abs(entry - end);
    if (miss < least && within(room, entry, end)) {
      least = miss;
      nearest = road;
    }
  };
  for (const slip of slips()) {
    consider(slip.value, { slip });
    // Where nothing came before, the learner's road is the true one.
    if (earlier.length > 0) consider(slip.follow(earlier), { slip, fromOwn: true });
  }
  return nearest;
}

/**
 * Takes the marks of what may be a guess: a letter or an order that fits counts only where a number after it is
 * right, follows on, or is a known slip. So somebody has gone some road, and a slip there costs itself alone.
 */
function borneOut(parts: readonly DrawnPart[], marks: readonly PartMark[]): readonly PartMark[] {
  if (!parts.some(({ definition }) => definition.form)) return marks;
  return marks.map((mark, i) => {
    const { earned, possible } = mark;
    const isGuess = isList(parts[i]?.definition.form) && earned > 0;
    const isBorne = marks.some(
      (later, j) =>
        j > i &&
        !isList(parts[j]?.definition.form) &&
        later.verdict !== 'missing' &&
        later.verdict !== 'unknown',
    );
    return !isGuess || isBorne ? mark : { verdict: 'alone', earned: 0, possible };
  });
}

/**
 * Gives the marks of parts left out: a right part vouches for all before it, one that follows on for those
 * since the last entry.
 */
function vouched(parts: readonly DrawnPart[], marks: readonly PartMark[]): readonly PartMark[] {
  if (!marks.some(({ verdict }) => verdict === 'missing')) return marks;
  let reach: 'none' | 'next' | 'all' = 'none';
  const fromTheEnd = marks.toReversed().map((mark, back): PartMark => {
    const { verdict, possible } = mark;
    if (verdict === 'missing')
      return reach === 'none' ? mark : { verdict: 'implied', earned: possible, possible };
    // A letter may be a guess, and a guess vouches for nobody.
    if (isList(parts[parts.length - 1 - back]?.definition.form)) return mark;
    if (verdict === 'right') reach = 'all';
    else if (reach !== 'all') reach = verdict === 'follow-on' ? 'next' : 'none';
    return mark;
  });
  return fromTheEnd.toReversed();
}
