import { describe, expect, test } from 'vitest';
import { fromSI } from '#core/units/convert.ts';
import { SHOWN } from '#core/display.ts';
import type { Finding, Sure } from '#core/judgement/finding.ts';
import { judge } from '#core/judgement/judge.ts';
import { judgeByTrials } from '#core/judgement/judge-by-trials.ts';
import { judgedQuantity } from '#core/judgement/judged-quantities.ts';
import { continueTrials, luckOf, startTrials } from '#core/judgement/trials.ts';
import { GARAGE_FILES, garageBench, garageSetup } from '../../garage-benches.ts';
import { seeded } from '../uncertainty/seeded.ts';
import { onRight } from './plane-bench.ts';
import { planePair, planeTrials } from './plane-table.ts';

const source =
  'Recomputed by plane trigonometry, ISO 281 and catalogue cases (from memory), with trials of its own';

/**
 * Tolerances: the plane sees no toe, which moves lengths by the trail times the toe (0.1° of 40 mm: 0.07 mm) and moments
 * by as much; the rod’s lever sees neither. Otherwise both have to agree to their digits.
 */
const NEAR: Readonly<Record<string, (size: number) => number>> = {
  length: () => 0.15,
  angle: () => 0.02,
  moment: (size) => 0.3 + 0.006 * size,
  force: (size) => 0.8 + 0.006 * size,
  life: (size) => 1e-6 * size,
  share: (size) => 1e-9 * size,
};

const TRIALS = 1500;

const inUnit = (finding: Finding, value: number): number =>
  fromSI(value, SHOWN.metric[judgedQuantity(finding.id).kind].unit);

describe.each(Array.from(GARAGE_FILES.keys()))(`%s (${source})`, (id) => {
  const document = garageBench(id);
  const setup = garageSetup(id);
  const changesOf = (i: number) => {
    const changes = setup.variants[i];
    if (changes === undefined) throw new RangeError(`no variant ${i}`);
    return changes;
  };

  test.each(document.variants.map((variant, i) => [variant.name, i] as const))(
    '%s: best estimates agree with plane trigonometry',
    (_, i) => {
      const changes = changesOf(i);
      const { before, after } = planePair(id, i);
      const findings = judge(setup, changes).findings;
      expect(findings.length).toBeGreaterThan(24);
      const off = findings.flatMap((finding) => {
        const near = NEAR[judgedQuantity(finding.id).kind] ?? (() => NaN);
        return (
          [
            ['before', before],
            ['after', after],
          ] as const
        )
          .map(([when, plane]) => {
            const [ours, theirs] = [inUnit(finding, finding[when].value), planed(plane, finding)];
            return { id: finding.id, when, ours, theirs, apart: Math.abs(ours - theirs) };
          })
          .filter(({ apart, theirs }) => !(apart <= near(Math.abs(theirs))));
      });
      expect(off).toEqual([]);
    },
  );

  test.each(document.variants.map((variant, i) => [variant.name, i] as const))(
    '%s: intervals agree with trials drawn apart',
    (_, i) => {
      const changes = changesOf(i);
      const drawn = planeTrials(id, i, TRIALS, seeded(77 + i));
      const luck = luckOf(setup, seeded(5), TRIALS);
      const run = continueTrials(startTrials(setup, luck), setup, changes, luck, TRIALS);
      const bySlope = judge(setup, changes).findings;
      const byTrials = judgeByTrials(setup, changes, run).findings;
      const off = bySlope.flatMap((finding, j) => {
        const tried = byTrials[j];
        if (tried === undefined) throw new RangeError('fewer findings by trials');
        return (['before', 'after', 'difference'] as const).flatMap((when) => {
          const column = drawn
            .map(({ before, after }) => {
              const [was, is] = [planed(before, finding), planed(after, finding)];
              return when === 'difference' ? is - was : when === 'before' ? was : is;
            })
            .sort((a, b) => a - b);
          return [
            ...widthOff(finding, when, column, tried[when]),
            ...coverageOff(finding, when, column, finding[when]),
          ];
        });
      });
      expect(off).toEqual([]);
    },
  );
});

const planed = (plane: Readonly<Record<string, number>>, { id, place }: Finding): number =>
  plane[place === 'right' ? onRight(id) : id] ?? NaN;

const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.round(share * (sorted.length - 1))] ?? NaN;

/** Ends of the intervals of both sets of trials lie as near as chance lets 1500 trials do, or as near as the plane is. */
function widthOff(
  finding: Finding,
  when: string,
  column: readonly number[],
  { least, most }: Sure,
): readonly object[] {
  const theirs = [quantile(column, 0.025), quantile(column, 0.975)] as const;
  const ours = [inUnit(finding, least), inUnit(finding, most)] as const;
  const width = theirs[1] - theirs[0];
  const near = NEAR[judgedQuantity(finding.id).kind]?.(Math.abs(theirs[1])) ?? NaN;
  // An end moves by about √(p(1−p)/n)/density: 2 % of the width for smooth shapes, more where a tail is
  // long; both sets do, and the farthest of some hundred ends lies four such steps out.
  const tail = finding.id.endsWith('Life') ? 0.25 : 0.1;
  const apart = Math.max(Math.abs(ours[0] - theirs[0]), Math.abs(ours[1] - theirs[1]));
  return apart <= near + tail * width ? [] : [{ id: finding.id, when, by: 'trials', ours, theirs }];
}

/**
 * The slope’s interval, meant for 95 in 100, holds 90 or more of the plane’s trials. Where a change of bearing loads hangs on
 * products of two doubts, as with a spacer that makes up for an inset, a slope knows less: 70 or more; trials have it right.
 */
function coverageOff(
  finding: Finding,
  when: string,
  column: readonly number[],
  { least, most }: Sure,
): readonly object[] {
  const near = NEAR[judgedQuantity(finding.id).kind]?.(Math.abs(quantile(column, 0.5))) ?? NaN;
  const ends = [inUnit(finding, least) - near, inUnit(finding, most) + near] as const;
  const held = column.filter((y) => y >= ends[0] && y <= ends[1]).length / column.length;
  const product = when === 'difference' && judgedQuantity(finding.id).group === 'bearing';
  return held >= (product ? 0.7 : 0.9) ? [] : [{ id: finding.id, when, by: 'slope', held, ends }];
}
