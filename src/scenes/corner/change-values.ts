import type { ChangeQuantity } from '#core/change-quantities.ts';
import { contactCentre, type Corner } from '#core/corner.ts';
import { rimEdges } from '#core/rim-edges.ts';

/** A corner with other wheels on it. */
export interface ChangeStanding {
  /** Straight ahead. */
  readonly ahead: Corner;
  /** In metres. */
  readonly rimWidth: number;
}

/** What a change of wheels moves besides the levers, in SI. */
export function byChange(id: ChangeQuantity, { ahead, rimWidth }: ChangeStanding): number {
  switch (id) {
    case 'track':
      // The other side of the car is taken to be changed alike.
      return 2 * Math.abs(contactCentre(ahead).y);
    case 'outerEdge':
      return rimEdges(ahead, rimWidth).outer;
    case 'innerEdge':
      return rimEdges(ahead, rimWidth).inner;
  }
}
