import type { Corner } from '#core/corner.ts';
import type { Vector } from '#core/vector.ts';
import { flat, type Sketch } from '../corner/sketch.ts';
import type { Mark, Window } from '../marks.ts';
import { point, rightward, type Point } from '../plane.ts';

/** Where a body is drawn: in the side view of the corner, moved along the paper. */
export interface Stage {
  readonly sketch: Sketch;
  /** To the right on paper, in millimetres of the car. */
  readonly shift: number;
}

/** How far wheel and carrier go when they are wholly apart, in millimetres of the car. */
const WAY = { wheel: 285, carrier: -225 } as const;

/** The wheel goes ahead of where it belongs, the carrier behind it. */
export const stageOf = (
  { side }: Pick<Corner, 'side'>,
  body: 'wheel' | 'carrier',
  apart: number,
): Stage => ({
  sketch: { view: 'side', side },
  shift: rightward('side', side) * apart * WAY[body],
});

export const onStage = ({ sketch, shift }: Stage, at: Vector): Point =>
  moved(flat(sketch, at), shift);

/** Outlines that were drawn where the corner has them, moved to the stage. */
export const staged = (marks: readonly Mark[], { shift }: Stage): Mark[] =>
  marks.map((mark) => {
    switch (mark.kind) {
      case 'path':
        return { ...mark, points: mark.points.map((at) => moved(at, shift)) };
      case 'circle':
        return { ...mark, centre: moved(mark.centre, shift) };
      case 'spot':
        return { ...mark, at: moved(mark.at, shift) };
      default:
        throw new RangeError(`a ${mark.kind} cannot be staged; paths, circles and spots can`);
    }
  });

/** The part of the drawing plane that is shown. It hangs on the car as it stands, so that the paper keeps still. */
export function bodiesWindow({ wheelCentre, loadedRadius, side }: Corner): Window {
  const hub = flat({ view: 'side', side }, wheelCentre);
  return { centre: point(hub.across, hub.up - 1000 * loadedRadius + 330), height: 960 };
}

const moved = ({ across, up }: Point, shift: number): Point => point(across + shift, up);
