import type { Corner, Pivots, Side } from '../corner.ts';
import type { RatedHub } from '../document/set-up-hub.ts';
import type { Fixing } from '../fastening/fixing.ts';
import type { SteeringGear } from '../handwheel.ts';
import type { Alignment } from './alignment.ts';
import type { Anatomy } from './anatomy.ts';

/** A corner that can be computed with and drawn: its pivots are known, and so are the sizes of its parts. */
export interface CornerModel {
  readonly corner: Corner & { readonly pivots: Pivots };
  readonly anatomy: Anatomy;
  readonly gear: SteeringGear;
  /** The wheel bearing, under the car's own wheel, and what it is driven with. */
  readonly bearing: RatedHub;
  /** Way rolled in one turn, divided by 2π; in metres. */
  readonly rollingRadius: number;
  readonly fixing: Fixing;
}

/** A training car: fictional, with every assumption said. */
export interface Car extends Readonly<Record<Side, CornerModel>> {
  readonly id: string;
  readonly name: string;
  readonly summary: string;
  readonly drive: 'front' | 'rear' | 'four';
  readonly suspension: Anatomy['suspension'];
  /** As marked on the sidewall. */
  readonly tyre: string;
  readonly assumed: readonly string[];
  /** What its front wheels are allowed; not every car has a sheet to be held against. */
  readonly alignment?: Alignment | undefined;
}
