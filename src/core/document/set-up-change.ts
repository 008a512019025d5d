import { radians } from '../angle.ts';
import { changeFaults, type Change } from '../change.ts';
import type { Corner } from '../corner.ts';
import type { Fault } from '../fault.ts';
import type { ChangeDocument } from './corner-document.ts';
import { inMetres } from './edge-units.ts';

/** Where a document has each member of a change. */
const PATHS: Readonly<Record<string, keyof ChangeDocument>> = {
  spacer: 'spacer_mm',
  inset: 'inset_mm',
  loadedRadius: 'loadedRadius_mm',
  camberAtUpperPivot: 'camberAtUpperPivot_deg',
  camberAtCarrier: 'camberAtCarrier_deg',
} as const satisfies Record<keyof Change, keyof ChangeDocument>;

export const changeOf = (document: ChangeDocument = {}): Change => ({
  spacer: inMetres(document.spacer_mm ?? 0),
  inset: inMetres(document.inset_mm ?? 0),
  loadedRadius: inMetres(document.loadedRadius_mm ?? 0),
  camberAtUpperPivot: radians(document.camberAtUpperPivot_deg ?? 0),
  camberAtCarrier: radians(document.camberAtCarrier_deg ?? 0),
});

/** What a corner cannot take of a change, with the document's paths. */
export function faultsOfChange(
  before: Corner,
  rollingRadius: number,
  change: Change,
): readonly Fault[] {
  const faults = changeFaults(before, change).map((fault) => ({
    ...fault,
    path: `change.${PATHS[fault.path] ?? fault.path}`,
  }));
  if (faults.length > 0 || rollingRadius + change.loadedRadius > 0) return faults;
  return [
    {
      path: 'change.loadedRadius_mm',
      wrong: 'takes away the whole rolling radius',
      allowed: 'a change that leaves the radius above 0',
    },
  ];
}
