import type { Finding, Judgement } from '#core/judgement/finding.ts';
import { JUDGED_IDS, judgedQuantity, type ResultGroup } from '#core/judgement/judged-quantities.ts';

export interface FindingGroup {
  readonly group: ResultGroup;
  readonly findings: readonly Finding[];
}

/** From the wheel to the driver, then what lies around. */
const ORDER: readonly ResultGroup[] = [
  'steering geometry',
  'moments',
  'hands',
  'bearing',
  'room',
  'rolling',
  'fastening',
];

/** The findings under their headings, left and right of a quantity side by side. */
export function groupedFindings({ findings }: Judgement): readonly FindingGroup[] {
  const inOrder = JUDGED_IDS.flatMap((id) => findings.filter((one) => one.id === id));
  return ORDER.map((group) => ({
    group,
    findings: inOrder.filter(({ id }) => judgedQuantity(id).group === group),
  })).filter((one) => one.findings.length > 0);
}
