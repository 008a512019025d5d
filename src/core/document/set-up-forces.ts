import type { Side } from '../corner.ts';
import { failure, success, type Fault, type Outcome } from '../fault.ts';
import type { LoadCase } from '../load-cases.ts';
import { pointsOutboard } from '../shaft-couple.ts';
import type { ForceDocument } from './corner-document.ts';
import { inMetres, vectorOf } from './edge-units.ts';

/** The load cases of a document's forces, in their order; none where it has no forces. */
export function loadCasesOf(
  forces: readonly ForceDocument[] | undefined,
  side: Side,
): Outcome<readonly LoadCase[] | undefined> {
  if (forces === undefined) return success(undefined);
  const faults = forces.flatMap((force, index) => faultsOfShaft(force, side, `forces[${index}]`));
  return faults.length === 0 ? success(forces.map(loadCaseOf)) : failure(...faults);
}

function loadCaseOf(document: ForceDocument): LoadCase {
  switch (document.case) {
    case 'brake-on-carrier':
    case 'vertical':
      return { kind: document.case, force: document.force_N };
    case 'shaft': {
      const { force_N: force, shaftDirection } = document;
      return { kind: 'shaft', force, shaftDirection: shaftDirection && vectorOf(shaftDirection) };
    }
    case 'impact':
      return { kind: 'impact', force: vectorOf(document.vector_N) };
    case 'lateral':
      return {
        kind: 'lateral',
        force: document.force_N,
        pneumaticTrail: inMetres(document.pneumaticTrail_mm),
      };
  }
}

function faultsOfShaft(force: ForceDocument, side: Side, path: string): readonly Fault[] {
  if (force.case !== 'shaft' || force.shaftDirection === undefined) return [];
  if (pointsOutboard({ side }, vectorOf(force.shaftDirection))) return [];
  return [
    {
      path: `${path}.shaftDirection`,
      wrong: `has a y of ${force.shaftDirection[1]}, which does not point outboard`,
      allowed: `a direction with y ${side === 'left' ? 'above' : 'below'} 0, from the car to its ${side} wheel`,
    },
  ];
}
