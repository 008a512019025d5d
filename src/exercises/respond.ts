import { drawnRoad, type DrawnRoad } from './drawn-road.ts';
import type { DrawnPart, Exercise } from './exercise.ts';
import { grade, type PartMark, type Verdict } from './grade.ts';
import { asked, inWords, lowerFirst, shown } from './in-words.ts';
import { nudge } from './nudge.ts';
import { followed, leadsOn, own, type Entry } from './own-road.ts';
import { phrase, type Phrase } from './phrase.ts';

/** What is said to an entry. Its words never stop at right or wrong. */
export interface Response {
  readonly verdict: Verdict;
  readonly words: Phrase;
  /** What was done, drawn; of a known wrong road that has a picture. */
  readonly road?: () => DrawnRoad | undefined;
}

/** What may be told to somebody who works for marks and can try again; all of it unless said. */
export interface Told {
  /** Answers that are still to be found. */
  readonly answers?: boolean;
  /** The part's hint, to whoever has not asked for it. */
  readonly hints?: boolean;
}

/**
 * Answers one entry of an exercise: what a right value means, where a known wrong road went, or what to do next.
 *
 * @param entries of all parts, in SI
 * @param index of the part to answer
 * @param told what may be told
 * @throws RangeError where the exercise has no such part
 */
export function respond(
  exercise: Exercise,
  entries: readonly Entry[],
  index: number,
  { answers = true, hints = true }: Told = {},
): Response {
  const marks = grade(exercise, entries).parts;
  const part = exercise.parts[index];
  const mark = marks[index];
  if (!part || !mark) throw new RangeError(`part ${index} of ${marks.length}`);
  const { verdict, slip } = mark;
  const entry = entries[index];
  const earlier = own(exercise.parts, entries, index);
  const wrong = lastWrong(exercise.parts, marks, index);
  const hint = hints ? part.hint() : [];
  const words = (): Phrase => {
    if (entry === undefined) return toNothing(part, verdict, hint);
    if (verdict === 'alone')
      return phrase`That fits: ${inWords(part, part.answer)} A letter may be a guess, so it counts once the number that bears it out stands below.`;
    if (verdict === 'right') return phrase`That fits: ${inWords(part, part.answer)}`;
    if (slip) return slip.text();
    if (verdict === 'follow-on' && wrong) return toFollowing(part, wrong, answers);
    const next = nudge(exercise, part, entry, earlier, hint);
    const used = wrong && entries[exercise.parts.indexOf(wrong)];
    if (!wrong || used === undefined) return next;
    const roadEnds = !leadsOn(wrong, used) || followed(part, earlier) === undefined;
    return roadEnds ? phrase`${toEndOfRoad(wrong, answers)} ${next}` : next;
  };
  return {
    ...{ verdict, words: words() },
    ...(slip?.picture && { road: () => drawnRoad(part, mark, earlier, wrong) }),
  };
}

const toNothing = (part: DrawnPart, verdict: Verdict, hint: Phrase): Phrase =>
  verdict === 'implied'
    ? phrase`Left out, but what follows shows that it was known: ${inWords(part, part.answer)}`
    : phrase`Nothing stands here yet. Enter ${asked(part)}. ${hint}`;

const toFollowing = (part: DrawnPart, wrong: DrawnPart, answers: boolean): Phrase =>
  answers
    ? phrase`This follows from your own value for “${nameOf(wrong)}”, so the method fits and nothing more is lost. From ${shown(wrong, wrong.answer)} it comes to this: ${inWords(part, part.answer)}`
    : phrase`This follows from your own value for “${nameOf(wrong)}”, so the method fits and nothing more is lost. Put that value right, and this one with it.`;

const toEndOfRoad = (wrong: DrawnPart, answers: boolean): Phrase =>
  answers
    ? phrase`Your value for “${nameOf(wrong)}” leads no farther. Go on from ${shown(wrong, wrong.answer)}.`
    : phrase`Your value for “${nameOf(wrong)}” leads no farther. Put that right first.`;

/** The last wrong part before this one: where a value that follows on most likely comes from. */
const lastWrong = (
  parts: readonly DrawnPart[],
  marks: readonly PartMark[],
  index: number,
): DrawnPart | undefined =>
  parts.slice(0, index).findLast((_part, i) => {
    const verdict = marks[i]?.verdict;
    return verdict === 'slip' || verdict === 'unknown';
  });

const nameOf = ({ definition }: DrawnPart): string => lowerFirst(definition.label);
