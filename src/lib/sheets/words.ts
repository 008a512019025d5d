import type { Fault } from '#core/fault.ts';
import type { Verdict } from '#exercises/grade.ts';
import type { RefusedFor } from '#exercises/sheet/collect.ts';
import { inHundredths } from '#exercises/sheet/tables.ts';
import { writeShortest } from '#core/write-number.ts';

/** A fault as a sentence beside its field. */
export const faultSentence = ({ wrong, allowed }: Fault): string =>
  `This ${wrong === 'is the text ""' ? 'is empty' : wrong}. Allowed: ${allowed}.`;

/** A fault that has no field of its own. */
export const faultWithPlace = (fault: Fault): string =>
  fault.path === ''
    ? faultSentence(fault)
    : `${fault.path} ${fault.wrong}; allowed: ${fault.allowed}.`;

/** Marks as they are written: hundredths at most. */
export const marksText = (marks: number): string => writeShortest(inHundredths(marks));

export const counted = (count: number, one: string, many = `${one}s`): string =>
  count === 1 ? `1 ${one}` : `${count} ${many}`;

export const LEVEL_WORDS = {
  1: 'one relation',
  2: 'several steps',
  3: 'backwards or compare',
} as const;

/** What became of a part, in a table or beside its field. */
export const VERDICT_WORDS: Readonly<Record<Verdict | 'unreadable', string>> = {
  right: 'right',
  'follow-on': 'follows from an earlier value',
  implied: 'left out, but known',
  alone: 'fits, but no number bears it out',
  slip: 'a known slip',
  unknown: 'wrong',
  missing: 'nothing there',
  unreadable: 'cannot be read',
};

export const REFUSED_WORDS: Readonly<Record<RefusedFor, string>> = {
  unreadable: 'Cannot be read',
  tampered: 'Changed after handing in, or damaged',
  outdated: 'Done on an older version of the exercises',
  foreign: 'Of another sheet',
  impossible: 'Cannot have been done on this sheet',
  duplicate: 'A second one for the same number',
};

/** A member of an item in words: `lowerOut_mm` is lower out, in mm. */
export function memberWords(name: string): string {
  if (name === 'answer') return 'the size of the last answer';
  const at = name.lastIndexOf('_');
  const words = name.slice(0, at).replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return `“${words}”, in ${name.slice(at + 1)}`;
}
