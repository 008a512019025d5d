import type { BenchDocument, VariantDocument } from '#core/judgement/bench-document.ts';
import { setUpBench, type BenchSetup } from '#core/judgement/bench-setup.ts';
import type { Finding, Judgement } from '#core/judgement/finding.ts';
import { judge } from '#core/judgement/judge.ts';
import type { JudgedId, ResultPlace } from '#core/judgement/judged-quantities.ts';
import { valueOf } from '../example-corner.ts';

export const setUp = (bench: BenchDocument, ...variants: readonly VariantDocument[]): BenchSetup =>
  valueOf(setUpBench({ ...bench, variants }));

export function judged(bench: BenchDocument, variant: VariantDocument): Judgement {
  const setup = setUp(bench, variant);
  const [changes] = setup.variants;
  if (changes === undefined) throw new RangeError('no variant');
  return judge(setup, changes);
}

export function find(judgement: Judgement, id: JudgedId, place: ResultPlace = 'left'): Finding {
  const found = judgement.findings.find((one) => one.id === id && one.place === place);
  if (found) return found;
  throw new RangeError(`no finding ${id} of ${place}`);
}
