import type { Part } from '../kind.ts';
import { within } from '../tolerance.ts';
import type { DrawnSet, SetForm } from './form.ts';

/** How far apart two settings are tried, in SI: a hundredth of a millimetre or half a thousandth of a degree. */
const NUDGE = 1e-5;
const MOST_ROUNDS = 20;

/** How much a setting may be off, in SI, when what it comes to may be off by `near`. */
export function settingTolerance(form: DrawnSet, answer: number): number {
  const slope = (form.reached(answer + NUDGE) - form.reached(answer)) / NUDGE;
  return form.aim.near / Math.abs(slope);
}

/** Whether a setting comes to what was to be reached: by the core, not by comparing settings. */
export const reaches = ({ aim, reached }: DrawnSet, setting: number, target: number): boolean =>
  within(aim.near, reached(setting), target);

/**
 * The setting that comes to a target, by secants from two settings; NaN where they lead nowhere.
 *
 * @param reached what a setting comes to; nearly straight, as corners are over the range of a workshop
 */
function settingThat(reached: (setting: number) => number, target: number): number {
  let [before, now] = [0, 0.01];
  let [missBefore, miss] = [reached(before) - target, reached(now) - target];
  for (let round = 0; round < MOST_ROUNDS && Math.abs(miss) > 1e-13; round++) {
    const next = now - (miss * (now - before)) / (miss - missBefore);
    if (!Number.isFinite(next)) break;
    [before, missBefore] = [now, miss];
    [now, miss] = [next, reached(next) - target];
  }
  return Math.abs(miss) <= 1e-9 ? now : NaN;
}

/** A part that is answered by setting the figure. */
export const setting = <Item>(
  part: Omit<Part<Item>, 'value' | 'form' | 'decimals'> & {
    readonly decimals?: number;
    readonly form: Omit<SetForm<Item>, 'kind'>;
  },
): Part<Item> => {
  const { target, reached } = part.form;
  return {
    ...part,
    decimals: part.decimals ?? 1,
    form: { kind: 'set', ...part.form },
    value: (item, earlier) => settingThat((value) => reached(item, value), target(item, earlier)),
  };
};
