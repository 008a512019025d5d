import type { Anatomy } from '#core/car/anatomy.ts';
import { contactCentre, type Side } from '#core/corner.ts';
import { valueText } from '#core/display.ts';
import { flat } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import type { Setting } from '../setting.ts';
import { AXLE_CASES, rearwardForce } from './axle-cases.ts';
import type { AxleLook } from './axle-scene.ts';
import type { AxleStanding } from './axle-standing.ts';

/** One side of an axle as it is drawn. */
export interface SidePlace {
  readonly side: Side;
  readonly axle: AxleStanding;
  readonly look: AxleLook;
  /** One unit of paper in millimetres of the car. */
  readonly unit: number;
  readonly anatomy: Anatomy;
  readonly setting: Setting;
}

/** The shortest arrow still shows its head, in units of paper. */
const SHORTEST = 16;

/** Units of paper for a newton of side force. */
const SCALE_ACROSS = 0.14;

/** How far from the wheel centre toward the tyre’s end its side is named. */
const NAME_SHARE = 0.72;

/** How far rearward (up on paper) the arrow of the force along the car reaches, in units of paper; negative forward. */
export function reachUp({ side, look: { which }, setting }: SidePlace): number {
  const force = rearwardForce(which, side, setting);
  return Math.sign(force) * Math.max(SHORTEST, Math.abs(force) * AXLE_CASES[which].scale);
}

/** Where a force along the car is drawn: from above, wheel centre and contact centre are nearly one point. */
export function forcePoint({ side, axle, look: { which } }: SidePlace): Point {
  const corner = axle.corners[side];
  const at = which === 'brake' ? contactCentre(corner) : corner.wheelCentre;
  return flat({ view: 'top', side }, at);
}

/** The road’s force along the car on one tyre, with its size. */
export function alongForce(place: SidePlace): Mark[] {
  const { side, look, setting, unit } = place;
  const force = rearwardForce(look.which, side, setting);
  if (force === 0) return [];
  const from = forcePoint(place);
  const to = point(from.across, from.up + reachUp(place) * unit);
  const common = { role: 'force', quantity: sideMoment(side) } as const;
  return [
    { kind: 'arrow', key: 'force', ...common, from, to },
    { kind: 'spot', key: 'force-point', role: 'force', at: from },
    {
      kind: 'label',
      key: 'force-name',
      ...common,
      at: to,
      text: valueText(Math.abs(force), 'force', look.units),
    },
  ];
}

/** The road’s force across the car on one tyre, a little behind the contact centre. */
export function sideForce({ side, axle, look, unit, setting }: SidePlace): Mark[] {
  const load = axle.loads[side].find(({ which }) => which === 'crown');
  if (!load) return [];
  const from = flat({ view: 'top', side }, load.action.point);
  const run = Math.max(SHORTEST, SCALE_ACROSS * Math.abs(setting.crown)) * Math.sign(setting.crown);
  const to = point(from.across + run * unit, from.up);
  const common = { role: 'force', quantity: sideMoment(side) } as const;
  return [
    { kind: 'arrow', key: 'side-force', ...common, from, to },
    {
      kind: 'label',
      key: 'side-force-name',
      ...common,
      at: to,
      text: valueText(Math.abs(setting.crown), 'force', look.units),
    },
  ];
}

export const sideMoment = (side: Side): 'leftMoment' | 'rightMoment' =>
  side === 'left' ? 'leftMoment' : 'rightMoment';

/** Which wheel it is, in the tyre’s half that the force leaves free: paper has the car’s left on the right. */
export function sideName(place: SidePlace): Mark[] {
  const { side, look, setting, anatomy } = place;
  const { across, up } = forcePoint(place);
  const way = rearwardForce(look.which, side, setting) < 0 ? 1 : -1;
  return [
    {
      kind: 'label',
      key: 'side-name',
      role: 'wheel',
      at: point(across, up + way * NAME_SHARE * anatomy.tyreRadius),
      here: true,
      text: side,
    },
  ];
}
