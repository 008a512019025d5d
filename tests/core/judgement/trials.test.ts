import { describe, expect, test } from 'vitest';
import { judge } from '#core/judgement/judge.ts';
import { FEWEST_TRIALS, judgeByTrials } from '#core/judgement/judge-by-trials.ts';
import { continueTrials, isDone, luckOf, startTrials } from '#core/judgement/trials.ts';
import { garageSetup } from '../../garage-benches.ts';
import { seeded } from '../uncertainty/seeded.ts';

const setup = garageSetup('hatchback-spacers');
const [thick, thin] = setup.variants;
if (thick === undefined || thin === undefined) throw new RangeError('two variants');
const luck = luckOf(setup, seeded(3), 1000);
const whole = continueTrials(startTrials(setup, luck), setup, thick, luck, 1000);

describe('trials', () => {
  test('come to the same in pieces and at once', () => {
    let run = startTrials(setup, luck);
    let pieces = 0;
    while (!isDone(run)) {
      run = continueTrials(run, setup, thick, luck, 170);
      pieces += 1;
    }
    expect(pieces).toBe(6);
    expect(run).toEqual(whole);
  });

  test('use again what an earlier run found before the change', () => {
    const next = continueTrials(startTrials(setup, luck, whole), setup, thin, luck, 1000);
    expect(next.before).toBe(whole.before);
    expect(next).toEqual(continueTrials(startTrials(setup, luck), setup, thin, luck, 1000));
  });

  test('say nothing while they are few: the slope stands', () => {
    const few = continueTrials(startTrials(setup, luck), setup, thick, luck, FEWEST_TRIALS - 1);
    expect(judgeByTrials(setup, thick, few)).toEqual(judge(setup, thick));
  });

  test('are judged for the results that are asked for', () => {
    const judgement = judgeByTrials(setup, thick, whole, ['scrubRadius']);
    expect(judgement.findings.map(({ id }) => id)).toEqual(['scrubRadius']);
    expect(judgement).toMatchObject({ by: 'trials', trials: 1000, failed: 0 });
  });

  test('know the sign of the scrub radius about as well as the slope', () => {
    const [byTrials] = judgeByTrials(setup, thick, whole).scrub;
    const [bySlope] = judge(setup, thick).scrub;
    expect(byTrials?.flips).toBe(bySlope?.flips);
    expect(Math.abs((byTrials?.before.chance ?? 0) - (bySlope?.before.chance ?? 1))).toBeLessThan(
      0.03,
    );
  });
});
