import type { CornerModel } from '#core/car/car.ts';
import { flat } from '../corner/sketch.ts';
import type { Window } from '../marks.ts';
import { point } from '../plane.ts';

/** The paper of an axle: wider than high. */
export const AXLE_PAPER = { width: 400, height: 330 } as const;

/** Room beside a tyre for a spacer and some air, in millimetres. */
const BESIDE = 90;

/** How far below the paper's upper edge the wheel centres lie, in units of paper: rearward forces point up. */
const CENTRES_BELOW_TOP = 146;

/** The part of the drawing plane that is shown. It hangs on the car as it stands, so that the paper keeps still. */
export function axleWindow({ corner, anatomy }: CornerModel): Window {
  const hub = flat({ view: 'top', side: corner.side }, corner.wheelCentre);
  const width = 2 * (Math.abs(hub.across) + anatomy.tyreWidth / 2 + BESIDE);
  const unit = width / AXLE_PAPER.width;
  const lower = CENTRES_BELOW_TOP - AXLE_PAPER.height / 2;
  return { centre: point(0, hub.up + lower * unit), height: AXLE_PAPER.height * unit };
}

/** One unit of an axle's paper in millimetres of the car. */
export const axleUnit = ({ height }: Window): number => height / AXLE_PAPER.height;
