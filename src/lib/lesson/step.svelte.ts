import { AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { getContext, setContext } from 'svelte';

const KEY = Symbol('step');

/** A step being read: what explains its prediction waits until that has been made. */
export class StepState {
  readonly number: number;
  predicted = $state(false);
  /** Where the figure begins: at a prediction's start, or at its end once that has been made. */
  arrival: () => Setting;
  /** Where a prediction leads: what is explained is explained there. */
  goal: Setting = AS_IT_STANDS;

  /** @param start where the figure begins unless a prediction says otherwise */
  constructor(number: number, start = AS_IT_STANDS) {
    this.number = number;
    this.arrival = () => start;
  }
}

export const provideStep = (step: StepState): StepState => setContext(KEY, step);

export function step(): StepState {
  const found = getContext<StepState | undefined>(KEY);
  if (!found) throw new Error('predictions and explanations stand in a step');
  return found;
}
