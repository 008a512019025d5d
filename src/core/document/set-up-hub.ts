import { radians } from '../angle.ts';
import type { DutyPhase } from '../bearing/hub-rating.ts';
import type { Hub } from '../bearing/hub.ts';
import { bearingRow, type Row } from '../bearing/row.ts';
import { failure, faultsOf, success, type Fault, type Outcome } from '../fault.ts';
import type { DutyDocument, HubDocument, RowDocument } from './corner-document.ts';
import { inMetres } from './edge-units.ts';

/** A hub with the duty cycle it is rated for. */
export interface RatedHub {
  readonly hub: Hub;
  readonly duty: readonly DutyPhase[];
}

/** How far from 1 the shares may add up: what rounding in binary leaves, no more. */
const ROUNDING = 1e-9;

/** The hub of a document, its load line moved out by a wheel shift in metres; none where there is no hub. */
export function ratedHubOf(
  document: HubDocument | undefined,
  wheelShift: number,
): Outcome<RatedHub | undefined> {
  if (document === undefined) return success(undefined);
  const outboard = rowOf(document.outboard, 'hub.outboard');
  const inboard = rowOf(document.inboard, 'hub.inboard');
  const ofDuty = faultsOfDuty(document.duty);
  if (!outboard.ok || !inboard.ok || ofDuty.length > 0)
    return failure(...faultsOf(outboard), ...faultsOf(inboard), ...ofDuty);
  return success({
    hub: {
      loadLineOffset: inMetres(document.loadLineOffset_mm) + wheelShift,
      spread: inMetres(document.spread_mm),
      outboard: outboard.value,
      inboard: inboard.value,
    },
    duty: document.duty.map(phaseOf),
  });
}

function rowOf({ kind, C_N, contactAngle_deg }: RowDocument, path: string): Outcome<Row> {
  const row = bearingRow(kind, C_N, radians(contactAngle_deg));
  if (row.ok) return row;
  return failure(...row.faults.map((fault) => ({ ...fault, path: `${path}.contactAngle_deg` })));
}

const phaseOf = ({ share, vertical_N, inward_N }: DutyDocument): DutyPhase => ({
  share,
  vertical: vertical_N,
  inward: inward_N,
});

function faultsOfDuty(duty: readonly DutyDocument[]): readonly Fault[] {
  const sum = duty.reduce((total, { share }) => total + share, 0);
  const loaded = duty.some(({ share, vertical_N, inward_N }) => {
    return share > 0 && (vertical_N !== 0 || inward_N !== 0);
  });
  const faults: Fault[] = [];
  if (!(Math.abs(sum - 1) <= ROUNDING))
    faults.push({
      path: 'hub.duty',
      wrong: `has shares that add up to ${Number(sum.toPrecision(12))}`,
      allowed: 'shares that add up to 1',
    });
  if (!loaded)
    faults.push({
      path: 'hub.duty',
      wrong: 'has no load in it',
      allowed: 'a load in at least one step with a share above 0',
    });
  return faults;
}
