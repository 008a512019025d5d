import { outboardSign, type Corner, type TieRod } from '../corner.ts';
import { faultsOf, type Fault } from '../fault.ts';
import type { SteeringGear } from '../handwheel.ts';
import { rodForce, rodLength } from '../tie-rod.ts';
import type { SteeringDocument } from './corner-document.ts';
import { inMetres, inMillimetres, pointOf } from './edge-units.ts';
import { RANGES } from './ranges.ts';
import { largerUnitHint } from './read-number.ts';
import { faultsOfReach } from './set-up-reach.ts';

export const tieRodOf = ({ outer_mm, inner_mm }: SteeringDocument): TieRod => ({
  outer: pointOf(outer_mm),
  inner: pointOf(inner_mm),
});

export const gearOf = (steering: SteeringDocument): SteeringGear => ({
  travelPerTurn: inMetres(steering.travelPerTurn_mm),
  rimRadius: inMetres(steering.rimDiameter_mm) / 2,
  assist: steering.assist ?? 1,
});

/** What keeps a tie rod from steering its corner. */
export function faultsOfTieRod({ axis, side, tieRod }: Corner): readonly Fault[] {
  if (tieRod === undefined) return [];
  const length_mm = inMillimetres(rodLength(tieRod));
  const { least, most } = RANGES.tieRodLength;
  if (!(length_mm >= least && length_mm <= most)) {
    const hint = largerUnitHint(length_mm, RANGES.tieRodLength);
    return [
      {
        path: 'steering.inner_mm',
        wrong: `makes a tie rod ${Number(length_mm.toPrecision(6))} mm long${hint}`,
        allowed: `a tie rod ${least} to ${most} mm long`,
      },
    ];
  }
  return [
    ...faultsOfReach('steering.outer_mm', tieRod.outer, axis),
    ...faultsOfDirection(side, tieRod),
    ...faultsOf(rodForce(axis, tieRod, 0)).map((fault) => ({
      ...fault,
      path: 'steering.outer_mm',
    })),
  ];
}

function faultsOfDirection(side: Corner['side'], { outer, inner }: TieRod): readonly Fault[] {
  if (outboardSign(side) * (outer.y - inner.y) > 0) return [];
  return [
    {
      path: 'steering.inner_mm',
      wrong: 'is not inboard of outer_mm',
      allowed: `an inner end with ${side === 'left' ? 'less' : 'more'} y than the outer end, on the ${side} side`,
    },
  ];
}
