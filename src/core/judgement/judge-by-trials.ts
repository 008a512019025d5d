import type { Sides } from '../axle.ts';
import { shareAbove, spreadOf } from '../uncertainty/spread.ts';
import type { CarSetup } from './bench-setup.ts';
import type { Finding, Judgement, Sure } from './finding.ts';
import type { WheelChange } from './fitted-car.ts';
import { judge } from './judge.ts';
import type { JudgedId } from './judged-quantities.ts';
import { isAlike, slotsOf } from './model.ts';
import { scrubSigns } from './scrub-sign.ts';
import type { TrialRun } from './trials.ts';

/** Fewer trials than this say nothing about the ends of an interval. */
export const FEWEST_TRIALS = 200;

/**
 * Judges a change by trials: intervals with equal tails, as the trials have them, crooked where the formulas are. Best
 * estimates and what matters most are those of the slope.
 *
 * @param run with `FEWEST_TRIALS` or more done; until then the judgement is that of the slope
 * @param ids which results to look through; all unless said. A page asks for those that it shows
 *
 * Source: JCGM 101:2008, clause 7.
 */
export function judgeByTrials(
  setup: CarSetup,
  changes: Sides<WheelChange>,
  run: TrialRun,
  ids?: readonly JudgedId[],
): Judgement {
  const { done } = run.after;
  const bySlope = judge(setup, changes);
  if (done < FEWEST_TRIALS) return bySlope;
  const slots = slotsOf(isAlike(setup.car, changes));
  const columnsOf = ({ id, place }: Pick<Finding, 'id' | 'place'>): readonly Float64Array[] => {
    const at = slots.findIndex((slot) => slot.id === id && slot.place === place);
    return [run.before, run.after].map(
      ({ columns }) => columns[at]?.subarray(0, done) ?? new Float64Array(done),
    );
  };
  const standing = standingRows(run, done);
  const findings = bySlope.findings
    .filter(({ id }) => ids === undefined || ids.includes(id))
    .map((finding) => {
      const [was, is] = columnsOf(finding).map((column) => picked(column, standing));
      return was && is ? spreadFinding(finding, was, is) : finding;
    });
  const chance = (finding: Finding, of: 'before' | 'after'): number => {
    const column = columnsOf(finding)[of === 'before' ? 0 : 1];
    return column ? shareAbove(picked(column, standing)) : NaN;
  };
  return {
    by: 'trials',
    trials: done,
    failed: done - standing.length,
    findings,
    scrub: scrubSigns(bySlope.findings, (_, of, finding) => chance(finding, of)),
  };
}

/** The trials in which the numbers made a car: those with a scrub radius, which is the first of the results. */
function standingRows({ before, after }: TrialRun, done: number): readonly number[] {
  const [first, second] = [before.columns[0], after.columns[0]];
  const rows: number[] = [];
  for (let i = 0; i < done; i++)
    if (Number.isFinite(first?.[i]) && Number.isFinite(second?.[i])) rows.push(i);
  return rows;
}

const picked = (column: Float64Array, rows: readonly number[]): Float64Array =>
  rows.length === column.length ? column : Float64Array.from(rows, (i) => column[i] ?? NaN);

function spreadFinding(finding: Finding, was: Float64Array, is: Float64Array): Finding {
  const difference = is.map((y, i) => y - (was[i] ?? NaN));
  const { ratio } = finding;
  return {
    ...finding,
    before: sureBy(finding.before, was),
    after: sureBy(finding.after, is),
    difference: sureBy(finding.difference, difference),
    ...(ratio && {
      ratio: sureBy(
        ratio,
        is.map((y, i) => y / (was[i] ?? NaN)),
      ),
    }),
  };
}

/** Of a result that a few trials could not have, such as a contact angle without load factors, the others count. */
function sureBy(sure: Sure, trials: Float64Array): Sure {
  const had = trials.every(Number.isFinite) ? trials : trials.filter(Number.isFinite);
  if (had.length < 2) return sure;
  const { standard, least, most } = spreadOf(had);
  return { value: sure.value, standard, least, most };
}
