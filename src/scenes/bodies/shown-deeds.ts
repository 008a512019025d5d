import type { Corner } from '#core/corner.ts';
import { belowCentre } from '#core/free-bodies.ts';
import { movedTo } from '#core/moved-action.ts';
import { NOTHING } from '#core/vector.ts';
import type { Setting } from '../setting.ts';
import type { BodiesLook } from './bodies-look.ts';
import { sizeOf, sizeText } from './deed-words.ts';
import { deedsOf, feltAtCentre, type Deed } from './deeds.ts';

/** A deed in the drawing, with words of its own where the names of the bodies do not say enough. */
export interface ShownDeed extends Deed {
  readonly text?: string;
}

/** Nearer than this the two bodies count as one: what they do to each other is inside and not drawn. */
const APART = 0.25;

/** Below this a couple is used up, in N·m: what rounding leaves. */
const USED_UP = 0.05;

export const isApart = ({ apart }: BodiesLook): boolean => apart >= APART;

/** Of all deeds those that are drawn: together only what comes from outside, apart all, the carrier's moved down where asked. */
export function shownDeeds(corner: Corner, setting: Setting, look: BodiesLook): ShownDeed[] {
  const deeds = deedsOf(corner, setting, look.which);
  if (!isApart(look)) return deeds.filter(({ body, pair }) => body === 'wheel' && !pair);
  const felt = deeds.find(({ key }) => key === 'felt');
  if (look.carried === undefined || felt === undefined) return [...deeds];
  return [
    ...deeds.filter(({ body }) => body === 'wheel'),
    ...carriedDeeds(corner, setting, look, felt, look.carried),
  ];
}

function carriedDeeds(
  corner: Corner,
  setting: Setting,
  { which, units }: BodiesLook,
  { pair: _alone, ...felt }: Deed,
  share: number,
): ShownDeed[] {
  const centre = feltAtCentre(corner, setting, which);
  const action = movedTo(centre, belowCentre(corner, share));
  const couple: Deed = {
    ...felt,
    key: 'left',
    kind: 'torque',
    action: { ...action, force: NOTHING },
    where: '',
  };
  const where = share === 0 ? felt.where : share < 1 ? 'below the wheel centre' : 'at the road';
  const force: ShownDeed = { ...felt, action: { ...action, couple: NOTHING }, where };
  if (Math.abs(sizeOf(corner, couple)) < USED_UP) return [force];
  return [force, { ...couple, text: `couple ${sizeText(corner, couple, units)}` }];
}
