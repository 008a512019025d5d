import { sizeText, type UnitSystem } from '#core/display.ts';
import type { Judgement, ScrubSign } from '#core/judgement/finding.ts';
import { judgedQuantity } from '#core/judgement/judged-quantities.ts';

/** What a change comes to in a line: the scrub radius before and after, and what is known of its sign. */
export interface Headline {
  readonly before: string;
  readonly after: string;
  readonly sign: string;
}

export function headlineOf(
  { findings, scrub }: Judgement,
  compared: boolean,
  system: UnitSystem,
): Headline | undefined {
  const finding = findings.find(({ id }) => id === 'scrubRadius');
  const sign = scrub.find(({ place }) => place === finding?.place);
  if (finding === undefined || sign === undefined) return undefined;
  const about = judgedQuantity('scrubRadius');
  return {
    before: sizeText(finding.before.value, about, system),
    after: sizeText(finding.after.value, about, system),
    sign: compared ? changedSign(sign) : standingSign(sign),
  };
}

function standingSign({ before }: ScrubSign): string {
  if (before.known) return 'its sign is known';
  return `its sign is not known: ${percent(before.chance)} of 100 that it is ${WORDS[before.sign]}`;
}

function changedSign({ flips, after, chanceOfFlip }: ScrubSign): string {
  if (flips === 'yes') return 'its sign turns round';
  if (flips === 'unknown')
    return `whether its sign turns is not known: it does in ${percent(chanceOfFlip)} cases of 100`;
  return after.known ? 'its sign stays, and is known' : 'its sign stays, but is not known';
}

const WORDS = { positive: 'inboard', negative: 'outboard' } as const;

const percent = (chance: number): number => Math.round(100 * chance);
