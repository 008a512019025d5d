import type { Corner } from '#core/corner.ts';
import { dot, length } from '#core/vector.ts';
import { flat } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import type { BodiesCase } from './cases.ts';
import { forceSeat, torqueSeat, type SeatPlace } from './deed-seats.ts';
import { sizeOf } from './deed-words.ts';
import type { Deed } from './deeds.ts';
import { onStage, type Stage } from './stage.ts';

/** How arrows grow: never past `most` units of paper, and half as long at `half` newtons. */
interface Growth {
  readonly most: number;
  readonly half: number;
  /** The torque in N·m that bends an arrow half as far as it can be bent. */
  readonly halfTurn: number;
}

/**
 * The forces of one picture are equal in size, and each case has arrows of its own: a rolling resistance would
 * not be seen beside a kerb.
 */
const GROWTH: Readonly<Record<BodiesCase, Growth>> = {
  brake: { most: 105, half: 1800, halfTurn: 400 },
  shaft: { most: 105, half: 1800, halfTurn: 400 },
  edge: { most: 66, half: 2400, halfTurn: 400 },
  rolling: { most: 80, half: 80, halfTurn: 20 },
};

/** The farthest that an arrow is bent, in radians. */
const MOST_TURN = 5;

/** Radii of bent arrows in units of paper: a shaft turns the hub, a load the tyre. */
const RADIUS = 43;
const RADII: Readonly<Record<string, number>> = { shaft: 27, load: 66 };

/** Where a deed is drawn, and where its words have room. */
export interface DeedPlace extends SeatPlace {
  readonly corner: Corner;
  readonly which: BodiesCase;
  readonly stage: Stage;
  /** On which side of the wheel centre a torque has room: +1 to the right on paper. */
  readonly room: 1 | -1;
}

/** An arrow for a force, straight, or for a torque, bent round the wheel centre, with its words beside it. */
export const deedMarks = (deed: Deed, text: string, place: DeedPlace): Mark[] =>
  deed.kind === 'force' ? forceMarks(deed, text, place) : torqueMarks(deed, text, place);

function forceMarks(deed: Deed, text: string, place: DeedPlace): Mark[] {
  const { which, stage, unit } = place;
  const { force, point: at } = deed.action;
  const { most, half } = GROWTH[which];
  const size = length(force);
  const run = (unit * most * size) / (size + half);
  const { across, up } = flat(stage.sketch, force);
  const scale = run / Math.hypot(across, up);
  const from = onStage(stage, at);
  const to = point(from.across + scale * across, from.up + scale * up);
  return [
    { kind: 'arrow', key: `deed-${deed.key}`, ...commonOf(deed), from, to },
    { kind: 'spot', key: `deed-${deed.key}-point`, role: 'force', at: from },
    label(deed, text, forceSeat(deed, text, from, to, place)),
  ];
}

function torqueMarks(deed: Deed, text: string, place: DeedPlace): Mark[] {
  const { corner, which, centre, room } = place;
  const radius = RADII[deed.key] ?? RADIUS;
  const size = Math.abs(sizeOf(corner, deed));
  // Seen from outside, a right-handed turn about the outboard spin axis goes counterclockwise.
  const sense = Math.sign(dot(deed.action.couple, corner.spin));
  const sweep = (sense * MOST_TURN * size) / (size + GROWTH[which].halfTurn);
  const from = (room > 0 ? 0 : Math.PI) - sweep / 2;
  return [
    { kind: 'turn', key: `deed-${deed.key}`, ...commonOf(deed), centre, radius, from, sweep },
    label(deed, text, torqueSeat(deed, room, place)),
  ];
}

const label = (deed: Deed, text: string, at: Point): Mark => ({
  kind: 'label',
  key: `deed-${deed.key}-name`,
  ...commonOf(deed),
  at,
  text,
  here: true,
});

const commonOf = ({ pair }: Deed) => ({ role: 'force', ...(pair && { pair }) }) as const;
