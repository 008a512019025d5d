import { sizeText } from '#core/display.ts';
import { quantity } from '#core/quantities.ts';
import type { Standing } from '../corner/standing.ts';
import { valueOf } from '../corner/standing.ts';
import type { Mark, Window } from '../marks.ts';
import { point } from '../plane.ts';
import type { AxleLook } from './axle-scene.ts';
import { axleUnit, AXLE_PAPER } from './axle-paper.ts';
import type { AxleStanding } from './axle-standing.ts';
import { LEVER_SCALE } from './moment-tile.ts';

/** Where the turning of the car is drawn, below the paper's upper edge, and its radius, in units of paper. */
const BELOW_TOP = 38;
const RADIUS = 30;

/** How far below its middle the words stand: clear of those of the wheels, or of those of the rack. */
const WORDS_BELOW = 46;
const ABOVE_RACK = 29;

/** How far the arrow is bent, in radians: by the least moment that is printed, and at most; and the moment in N·m half way. */
const LEAST_TURN = 0.8;
const MOST_TURN = 4.4;
const HALF_TURN = 900;

/** Moments below this print as nought, in N·m. */
const LEAST_MOMENT = 0.05;

/** How far above the paper’s lower edge its last words stand, and the ones before them. */
const ABOVE_BOTTOM = 12;
const NEXT_LINE = 20;

/** What the road’s forces along the car do to the car: they turn it about the upright. */
export function yawMarks(now: Standing, look: AxleLook, window: Window): Mark[] {
  if (!look.measures.includes('yawMoment')) return [];
  const unit = axleUnit(window);
  const size = valueOf('yawMoment', now);
  const centre = point(0, window.centre.up + (AXLE_PAPER.height / 2 - BELOW_TOP) * unit);
  const sweep = bendOf(size);
  const common = { role: 'force', quantity: 'yawMoment' } as const;
  const below = look.measures.includes('netRackForce') ? ABOVE_RACK : WORDS_BELOW;
  return [
    {
      kind: 'turn',
      key: 'yaw',
      ...common,
      centre,
      radius: RADIUS,
      from: Math.PI / 2 - sweep / 2,
      sweep,
    },
    {
      kind: 'label',
      key: 'yaw-name',
      ...common,
      at: point(0, centre.up - below * unit),
      here: true,
      text: `car ${sizeText(size, quantity('yawMoment'), look.units)}`,
    },
  ];
}

function bendOf(size: number): number {
  const most = Math.abs(size);
  if (most < LEAST_MOMENT) return 0;
  return Math.sign(size) * (LEAST_TURN + ((MOST_TURN - LEAST_TURN) * most) / (most + HALF_TURN));
}

/** What a reader has to know of the areas: how their levers are drawn. And which end of the car is below. */
export function scaleNote(axle: AxleStanding, look: AxleLook, window: Window): Mark[] {
  const unit = axleUnit(window);
  const bottom = window.centre.up - (AXLE_PAPER.height / 2 - ABOVE_BOTTOM) * unit;
  const areas =
    look.measures.includes('leftMoment') &&
    [...axle.loads.left, ...axle.loads.right].some(({ which }) => which === look.which);
  const words = (key: string, text: string, line: number): Mark => ({
    kind: 'label',
    key,
    role: 'guide',
    at: point(0, bottom + line * NEXT_LINE * unit),
    here: true,
    text,
  });
  return [
    words('front', 'front of the car', areas ? 1 : 0),
    ...(areas ? [words('scale-note', `levers ${LEVER_SCALE} times as long`, 0)] : []),
  ];
}
