import { fatigueShares } from '#core/bearing/fatigue.ts';
import { drivenDuty, type DrivenPhase } from '#core/bearing/driven-duty.ts';
import type { Hub } from '#core/bearing/hub.ts';
import { rateHub, type HubRating, type WheelRadii } from '#core/bearing/hub-rating.ts';
import { lifeExponent } from '#core/bearing/life.ts';
import { adjustedLife } from '#core/bearing/reliability.ts';
import type { Rows } from '#core/bearing/rows.ts';
import type { CornerModel } from '#core/car/car.ts';
import type { LifeQuantity } from '#core/life-quantities.ts';
import { toSI } from '#core/units/convert.ts';
import { unchanged, type Setting } from '../setting.ts';

/** A wheel bearing as it rolls: the hub under its load line, what it is driven with, and the wheel's radii. */
export interface Rolling {
  readonly hub: Hub;
  readonly duty: readonly DrivenPhase[];
  readonly radii: WheelRadii;
}

/** The bearing of a corner at a setting. A camber of a few degrees moves its loads too little to count. */
export const rolling = (model: CornerModel, setting: Setting): Rolling => ({
  hub: {
    ...model.bearing.hub,
    loadLineOffset: loadLineOffset(model, setting),
  },
  duty: drivenDuty(model.bearing.duty, {
    load: 1 + setting.laden / 100,
    outer: setting.outerBends / 100,
    inner: setting.innerBends / 100,
    rough: setting.rough / 100,
    pace: 1 + setting.pace / 100,
  }),
  radii: {
    loadedRadius: model.corner.loadedRadius + setting.radius / 1000,
    rollingRadius: model.rollingRadius + setting.radius / 1000,
  },
});

/** Load-line offset x at a setting, in metres, positive outboard. */
export const loadLineOffset = ({ bearing }: CornerModel, { spacer, inset }: Setting): number =>
  bearing.hub.loadLineOffset + (spacer - inset) / 1000;

/** The hub's rating for its duty cycle. */
export const ratingOf = ({ hub, duty, radii }: Rolling): HubRating => rateHub(hub, duty, radii);

/** What each phase of the duty takes of a row's life, in the order of the duty. */
export function fatigueOf(
  { hub, duty, radii }: Rolling,
  row: keyof Rows<number>,
): readonly number[] {
  const { phases } = rateHub(hub, duty, radii);
  const steps = phases.map(({ share, equivalent }) => ({ share, load: equivalent[row] }));
  return fatigueShares(steps, lifeExponent(hub[row].kind));
}

/** A quantity of the bearing's life, in SI: revolutions, metres, newtons, or a bare share. */
export function lifeValue(id: LifeQuantity, model: CornerModel, setting: Setting): number {
  const now = rolling(model, setting);
  const { outboard, inboard, life, distance_km } = ratingOf(now);
  switch (id) {
    case 'rowRating':
      return now.hub.outboard.dynamicRating;
    case 'outboardMeanLoad':
      return outboard.meanLoad;
    case 'inboardMeanLoad':
      return inboard.meanLoad;
    case 'outboardLife':
      return toSI(outboard.life, 'Mrev');
    case 'inboardLife':
      return toSI(inboard.life, 'Mrev');
    case 'hubLife':
      return toSI(life, 'Mrev');
    case 'hubDistance':
      return toSI(distance_km, 'km');
    case 'relativeLife':
      return life / ratingOf(rolling(model, unchanged(setting))).life;
    case 'life95':
      return toSI(adjustedLife(life, 0.95), 'Mrev');
    case 'life99':
      return toSI(adjustedLife(life, 0.99), 'Mrev');
    case 'bendShare':
      return inBends(
        now.duty,
        now.duty.map(({ share }) => share),
      );
    case 'outboardBendFatigue':
      return inBends(now.duty, fatigueOf(now, 'outboard'));
    case 'inboardBendFatigue':
      return inBends(now.duty, fatigueOf(now, 'inboard'));
  }
}

/** The part of a whole that falls to bends. */
const inBends = (duty: readonly DrivenPhase[], shares: readonly number[]): number =>
  duty.reduce(
    (sum, { kind }, i) => sum + (kind === 'inner' || kind === 'outer' ? (shares[i] ?? 0) : 0),
    0,
  );
