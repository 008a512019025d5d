import { shownAsZero } from '../display.ts';
import { TYPICAL_RANGES, type TypicalRange } from '../typical-ranges.ts';
import { BURDEN_IDS, BURDENS, type Burden } from './burdens.ts';
import type { Finding, Judgement, Sure } from './finding.ts';
import { judgedQuantity, type JudgedId, type ResultPlace } from './judged-quantities.ts';
import { scrubPoint } from './tell-scrub.ts';
import { limitPoints } from './tell-limits.ts';

/** One sentence of a summary, and the result that it speaks of. */
export interface Point {
  readonly id: JudgedId;
  readonly place: ResultPlace;
  readonly text: string;
}

/** What a change makes better and worse, and what cannot be said: never whether it is safe. */
export interface Telling {
  readonly better: readonly Point[];
  readonly worse: readonly Point[];
  readonly unknown: readonly Point[];
}

type Verdict = keyof Telling | 'same';

/** Sums a judgement up in sentences. What stays as it was, as far as its digits are shown, is not mentioned. */
export function tellingOf({ findings, scrub }: Judgement): Telling {
  const told = BURDEN_IDS.flatMap((id) => findings.filter((finding) => finding.id === id)).flatMap(
    (finding): readonly { readonly verdict: Verdict; readonly point: Point }[] => {
      const burden = BURDENS[finding.id];
      if (burden === undefined) return [];
      const verdict = verdictOf(finding, burden);
      return verdict === 'same'
        ? []
        : [
            {
              verdict,
              point: { id: finding.id, place: finding.place, text: textOf(burden, verdict) },
            },
          ];
    },
  );
  const points = (verdict: keyof Telling): readonly Point[] => [
    ...scrub.flatMap((sign) => scrubPoint(sign, verdict)),
    ...limitPoints(findings, verdict),
    ...told.filter((one) => one.verdict === verdict).map(({ point }) => point),
  ];
  return { better: points('better'), worse: points('worse'), unknown: points('unknown') };
}

function textOf(burden: Burden, verdict: keyof Telling): string {
  if (verdict === 'better') return burden.onBetter;
  return verdict === 'worse' ? burden.onWorse : burden.onUnknown;
}

/** Whether a result gets better or worse for sure: its whole interval lies on one side of nought. */
function verdictOf(finding: Finding, { worse }: Burden): Verdict {
  const { difference } = finding;
  const { kind } = judgedQuantity(finding.id);
  if (shownAsZero(difference.least, kind) && shownAsZero(difference.most, kind)) return 'same';
  const grown = worse === 'up' || worse === 'down' ? difference : growthInSize(finding);
  if (grown === undefined) return 'unknown';
  const worsened = worse === 'up' || worse === 'more' ? grown : turnedRound(grown);
  if (worsened.least > 0) return 'worse';
  return worsened.most < 0 ? 'better' : 'unknown';
}

/** By how much a result grows in size; undefined where its sign is not known on either side of the change. */
function growthInSize({
  before,
  after,
  difference,
}: Finding): Pick<Sure, 'least' | 'most'> | undefined {
  const [was, is] = [signOf(before), signOf(after)];
  if (was !== 0 && was === is) return was > 0 ? difference : turnedRound(difference);
  // On different sides of nought, or from nought: the sizes apart by no more and no less than their ends allow.
  const sizes = { before: sizeOf(before), after: sizeOf(after) };
  const least = sizes.after.least - sizes.before.most;
  const most = sizes.after.most - sizes.before.least;
  return least > 0 || most < 0 ? { least, most } : undefined;
}

const turnedRound = ({
  least,
  most,
}: Pick<Sure, 'least' | 'most'>): Pick<Sure, 'least' | 'most'> => ({
  least: -most,
  most: -least,
});

const signOf = ({ least, most }: Sure): -1 | 0 | 1 => (least > 0 ? 1 : most < 0 ? -1 : 0);

function sizeOf(sure: Sure): Pick<Sure, 'least' | 'most'> {
  const { least, most } = sure;
  const ends = [Math.abs(least), Math.abs(most)];
  return { least: signOf(sure) === 0 ? 0 : Math.min(...ends), most: Math.max(...ends) };
}

/** Where a result lies beside what is usual on cars. */
export type BesideUsual = 'inside' | 'outside' | 'unknown';

/** A usual range for a result after a change, where there is one, and where the result lies. */
export function besideUsual({
  id,
  after,
}: Pick<Finding, 'id' | 'after'>):
  { readonly range: TypicalRange; readonly lies: BesideUsual } | undefined {
  const range = (TYPICAL_RANGES as Partial<Record<string, TypicalRange>>)[id];
  if (range === undefined) return undefined;
  if (after.least >= range.least && after.most <= range.most) return { range, lies: 'inside' };
  const outside = after.most < range.least || after.least > range.most;
  return { range, lies: outside ? 'outside' : 'unknown' };
}
