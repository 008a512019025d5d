import type { Sides } from '#core/axle.ts';
import type { CarSetup } from '#core/judgement/bench-setup.ts';
import type { Judgement } from '#core/judgement/finding.ts';
import type { WheelChange } from '#core/judgement/fitted-car.ts';
import { judgeByTrials } from '#core/judgement/judge-by-trials.ts';
import { continueTrials, isDone, luckOf, startTrials } from '#core/judgement/trials.ts';
import { seeded } from '$lib/figures/seeded';

/** The same luck for everybody and every time: numbers on two screens are to be the same. */
export const TRIAL_SEED = 1;

/** So many at a time, between which the page can answer a finger. */
const AT_ONCE = 500;

/** When hands are still: trials begin when nothing has changed for so long, in milliseconds. */
const STILL = 400;

/** Judges a change by trials, bit by bit, in the pauses of the page. */
export class TrialJudge {
  /** What all the trials have come to; undefined until then, and whenever something has changed. */
  judgement = $state.raw<Judgement>();
  #waiting: ReturnType<typeof setTimeout> | undefined;

  /** Begins anew with a car and a change. */
  begin(setup: CarSetup, changes: Sides<WheelChange>): void {
    this.stop();
    this.judgement = undefined;
    this.#waiting = setTimeout(() => {
      const luck = luckOf(setup, seeded(TRIAL_SEED));
      let run = startTrials(setup, luck);
      const goOn = (): void => {
        run = continueTrials(run, setup, changes, luck, AT_ONCE);
        if (isDone(run)) this.judgement = judgeByTrials(setup, changes, run);
        else this.#waiting = setTimeout(goOn);
      };
      goOn();
    }, STILL);
  }

  stop(): void {
    clearTimeout(this.#waiting);
  }
}
