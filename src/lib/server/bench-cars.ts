import { faultLine } from '#core/fault.ts';
import type { BenchDocument } from '#core/judgement/bench-document.ts';
import { benchOfTrainingCar } from '#core/judgement/start.ts';
import { carFiles } from './cars';

/** The training cars as the bench takes them, in the order in which they are shown. */
export const benchCars = (): readonly { readonly id: string; readonly document: BenchDocument }[] =>
  carFiles().map(({ id, file }) => {
    const bench = benchOfTrainingCar(file);
    if (!bench.ok) throw new Error(`${id}:\n${bench.faults.map(faultLine).join('\n')}`);
    return { id, document: bench.value };
  });
