import type { JudgedId } from '#core/judgement/judged-quantities.ts';
import { getContext, setContext } from 'svelte';
import type { ExplainingStep } from './explained-by';

const KEY = Symbol('explaining steps');

export type ExplainingSteps = Partial<Readonly<Record<JudgedId, ExplainingStep>>>;

export const provideExplainingSteps = (steps: ExplainingSteps): ExplainingSteps =>
  setContext(KEY, steps);

/** Which step of which lesson explains each result. */
export const explainingStepsHere = (): ExplainingSteps =>
  getContext<ExplainingSteps | undefined>(KEY) ?? {};
