import { momentOf } from '#core/action.ts';
import type { CornerModel } from '#core/car/car.ts';
import { sizeText as saidWithWay, valueText } from '#core/display.ts';
import { belowCentre } from '#core/free-bodies.ts';
import { movedTo } from '#core/moved-action.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';
import { NOTHING } from '#core/vector.ts';
import { standing, valueOf, type Standing } from '../corner/standing.ts';
import type { Setting } from '../setting.ts';
import type { BodiesLook } from './bodies-look.ts';
import { BODIES_CASES, type BodiesCase } from './cases.ts';
import { deedName, sizeText, wayText } from './deed-words.ts';
import { feltAtCentre, type Deed } from './deeds.ts';
import { shownDeeds } from './shown-deeds.ts';

/** A line of the table beside the drawing: who does what to whom. */
export interface DeedRow {
  readonly key: string;
  readonly pair?: Deed['pair'];
  readonly body: Deed['body'];
  readonly name: string;
  readonly size: string;
  readonly way: string;
}

/** A number that follows from the deeds. */
export interface NumberRow {
  readonly key: string;
  readonly name: string;
  readonly value: string;
  /** Where the course has a name for it. */
  readonly quantity?: QuantityId;
}

/** Everything that the drawing shows, in lines. */
export function deedRows(model: CornerModel, setting: Setting, look: BodiesLook): DeedRow[] {
  const { corner } = standing(model, setting);
  return shownDeeds(corner, setting, look).map((deed) => ({
    key: deed.key,
    ...(deed.pair && { pair: deed.pair }),
    body: deed.body,
    name: deed.key === 'left' ? 'couple left on carrier' : deedName(deed),
    size: sizeText(corner, deed, look.units),
    way: wayText(corner, deed),
  }));
}

/**
 * The torque at the wheel; and, where a step asks for it, the moment about the steering axis: where the force is
 * carried down, that of its two parts as well.
 */
export function numberRows(
  model: CornerModel,
  setting: Setting,
  look: BodiesLook,
  moments: boolean,
): NumberRow[] {
  const now = standing(model, setting);
  const { load, moment } = BODIES_CASES[look.which];
  const force = setting[load];
  if (force === 0) return [];
  const { loadedRadius } = now.corner;
  const { units } = look;
  // An edge pushes toward the wheel centre: there is nothing to hold against spinning.
  const torques: NumberRow[] =
    look.which === 'edge'
      ? []
      : [
          {
            key: 'torque',
            name: 'force × loaded radius',
            value: `${valueText(Math.abs(force), 'force', units)} × ${valueText(loadedRadius, 'length', units)} = ${valueText(Math.abs(force) * loadedRadius, 'moment', units)}`,
          },
        ];
  if (!moments) return torques;
  return [
    ...torques,
    ...(look.carried === undefined ? [] : carriedRows(now, setting, look, look.carried)),
    {
      key: 'moment',
      name:
        look.carried === undefined
          ? 'moment about the steering axis'
          : 'together, about the steering axis',
      value: saidWithWay(valueOf(moment, now), quantity(moment), units),
      quantity: moment,
    },
  ];
}

/** The moments of the force where it is counted, and of the couple that is left. */
function carriedRows(
  { corner }: Standing,
  setting: Setting,
  { which, units }: BodiesLook,
  share: number,
): NumberRow[] {
  if (which !== 'brake') return [];
  const centre = feltAtCentre(corner, setting, which);
  const action = movedTo(centre, belowCentre(corner, share));
  const about = quantity(BODIES_CASES[which].moment);
  const said = (moment: number): string => saidWithWay(moment, about, units);
  return [
    {
      key: 'of-force',
      name: 'moment of the force there',
      value: said(momentOf(corner, { ...action, couple: NOTHING })),
    },
    {
      key: 'of-couple',
      name: 'moment of the couple left',
      value: said(momentOf(corner, { ...action, force: NOTHING })),
    },
  ];
}

const WHY_NO_TORQUE: Readonly<Record<Exclude<BodiesCase, 'brake'>, string>> = {
  shaft: 'the torque goes through the shaft and leaves the carrier alone',
  edge: 'the push goes through the wheel centre',
  rolling: 'the bearing lets the wheel turn, and the load ahead of the centre holds it',
};

/** What the carrier feels, as a sentence; empty without a load. */
export function feltWords(
  model: CornerModel,
  setting: Setting,
  { which, carried, units }: BodiesLook,
): string {
  if (setting[BODIES_CASES[which].load] === 0) return '';
  const { corner } = standing(model, setting);
  const action = feltAtCentre(corner, setting, which);
  const force = { kind: 'force', action, where: 'at the wheel centre' } as const;
  const start = `The carrier feels ${sizeText(corner, force, units)} ${wayText(corner, force)}`;
  if (which !== 'brake') return `${start} and no torque: ${WHY_NO_TORQUE[which]}.`;
  const torque = sizeText(corner, { kind: 'torque', action }, units);
  const end = carried === undefined ? '' : ' Together they are the same force at the road.';
  return `${start} and the brake’s torque of ${torque}.${end}`;
}
