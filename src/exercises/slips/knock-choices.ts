import { otherSide, type Side } from '#core/corner.ts';
import type { Choice } from '../forms/choosing.ts';
import { CAUSES, sideOf, whatOf, type Cause, type Knocked, type What } from '../paper/knock.ts';
import { phrase } from '../phrase.ts';

/** What each cause has done, in words. */
const SAYS: Readonly<Record<What, (side: Side) => string>> = {
  carrier: (side) => `on the ${side} something in carrier or strut is bent`,
  top: (side) => `on the ${side} the upper pivot sits elsewhere`,
  subframe: (side) => `the subframe with both lower pivots has gone to the ${side}`,
};

/** What each of them would leave on a sheet. */
const WOULD: Readonly<Record<What, string>> = {
  carrier:
    'A bent carrier or strut changes the camber and leaves the inclination, so the included angle is another one',
  top: 'An upper pivot that sits elsewhere turns axis and wheel together, so camber and inclination change against each other and the included angle stays',
  subframe:
    'A subframe that has gone aside changes both wheels, one the other way about than the other, and both included angles stay',
};

const CONFUSES: Readonly<Record<What, string>> = {
  carrier: 'bent carrier',
  top: 'upper pivot',
  subframe: 'subframe',
};

/** What a cause would leave on a sheet, in a sentence without its stop. */
export const wouldLeave = (cause: Cause): string => WOULD[whatOf(cause)];

/** What a cause has done, in the words of its choice. */
export const hasDone = (cause: Cause): string => SAYS[whatOf(cause)](sideOf(cause));

/** What the sheet does show, for somebody who chose another cause. */
function shows(item: Knocked, taken: string): string {
  const what = whatOf(item.cause);
  const side = sideOf(item.cause);
  if (whatOf(taken) === what)
    return what === 'subframe'
      ? `Here it is the ${side} camber that has gone inboard at the top: there the foot of the axis has gone outboard`
      : `That would be right for the other side: on the ${otherSide(side)} nothing has changed here`;
  if (what === 'subframe') return 'Here both sides have changed, by the same and opposite ways';
  return what === 'carrier'
    ? `Here the ${side} camber alone has changed, and its inclination has not`
    : `Here only the ${side} has changed, camber and inclination by the same and opposite ways`;
}

/** The causes to choose from, in the order of `CAUSES`; for a wrong one, what it would leave and what is there. */
export const KNOCK_CHOICES: readonly Choice<Knocked>[] = CAUSES.map((cause) => ({
  id: cause,
  words: () => [hasDone(cause)],
  confuses: CONFUSES[whatOf(cause)],
  text: (item) => phrase`${wouldLeave(cause)}. ${shows(item, cause)}.`,
}));
