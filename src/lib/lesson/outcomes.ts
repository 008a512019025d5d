import { momentOf } from '#core/action.ts';
import type { Sides } from '#core/axle.ts';
import { isAxleQuantity } from '#core/axle-quantities.ts';
import { isBearingQuantity } from '#core/bearing-quantities.ts';
import type { CornerModel } from '#core/car/car.ts';
import { contactCentre } from '#core/corner.ts';
import { isLifeQuantity } from '#core/life-quantities.ts';
import type { QuantityId } from '#core/quantities.ts';
import { standing, valueOf, type Standing } from '#scenes/corner/standing.ts';
import type { LoadId } from '#scenes/parameters.ts';
import type { Setting } from '#scenes/setting.ts';
import { bearingOutcomes } from './bearing-outcomes';
import type { Outcomes, RollingOutcomes } from './prediction-slips';
import { handedOver } from '#scenes/axle/axle-cases.ts';
import { AXLE_LOAD_IDS } from '#scenes/axle/axle-parameters.ts';

/** The moments of forces along the car. Of those only the brake’s counts at the road. */
const ALONG: Partial<Readonly<Record<QuantityId, LoadId>>> = {
  brakeMoment: 'brake',
  driveMoment: 'drive',
  blowMoment: 'blow',
  dragMoment: 'drag',
};

/** What a prediction of a quantity is about when the figure goes from one setting to another. */
export function outcomesOf(
  of: QuantityId,
  model: CornerModel,
  from: Setting,
  to: Setting,
): Outcomes {
  const [before, now] = [standing(model, from), standing(model, to)];
  return {
    of,
    before: valueOf(of, before),
    after: valueOf(of, now),
    atOtherLever: isAxleQuantity(of)
      ? valueOf(of, standing(model, atOtherHeight(to)))
      : atOtherLever(of, now),
    ...(isAxleQuantity(of) && { sides: bySide(of, model, to) }),
    ...(isBearingQuantity(of) && { bearing: bearingOutcomes(of, now) }),
    ...(of === 'sideMoment' && sideOutcomes(before, now)),
    ...(of === 'includedAngle' && {
      withTheCamber: valueOf(of, before) + valueOf('camber', now) - valueOf('camber', before),
    }),
    rolling: isLifeQuantity(of) ? rollingOutcomes(of, before, now) : undefined,
  };
}

/** What a prediction about the life of a bearing may go wrong by. */
function rollingOutcomes(of: QuantityId, before: Standing, now: Standing): RollingOutcomes {
  const { model, setting } = now;
  const straight = (one: Standing): number => 1 - valueOf('bendShare', one);
  return {
    loads: (100 + setting.laden) / (100 + before.setting.laden),
    straight: straight(now) / straight(before),
    rows: [valueOf('outboardLife', now), valueOf('inboardLife', now)],
    withItsBends: valueOf(
      of,
      standing(model, { ...setting, outerBends: 0, innerBends: 0, rough: 0, pace: 0 }),
    ),
  };
}

/** The moment of the same force at the wheel centre instead of the road, or the other way about. */
function atOtherLever(of: QuantityId, { corner, loads }: Standing): number | undefined {
  const load = loads.find(({ id }) => id === ALONG[of]);
  if (!load) return undefined;
  const point = load.id === 'brake' ? corner.wheelCentre : contactCentre(corner);
  return momentOf(corner, { ...load.action, point });
}

/** The same forces on both tyres, held by shafts instead of brakes on the carriers, or the other way about. */
const atOtherHeight = (setting: Setting): Setting => {
  const braked = setting.leftBrake !== 0 || setting.rightBrake !== 0;
  const [from, to] = braked ? (['brake', 'shaft'] as const) : (['shaft', 'brake'] as const);
  return { ...setting, ...handedOver(setting, from, to) };
};

/** What is left of a quantity when one side after the other carries its loads alone. */
function bySide(of: QuantityId, model: CornerModel, setting: Setting): Sides<number> {
  const without = (side: string): Setting => ({
    ...setting,
    ...Object.fromEntries(AXLE_LOAD_IDS.filter((id) => id.startsWith(side)).map((id) => [id, 0])),
  });
  return {
    left: valueOf(of, standing(model, without('right'))),
    right: valueOf(of, standing(model, without('left'))),
  };
}

/** Where the roads end that forget the tyre's own trail, or that it shrinks. */
function sideOutcomes(
  before: Standing,
  now: Standing,
): Pick<Outcomes, 'withoutTyre' | 'inProportion'> {
  const side = ({ loads }: Standing) => loads.find(({ id }) => id === 'side');
  const [was, is] = [side(before), side(now)];
  return {
    withoutTyre: is && momentOf(now.corner, { ...is.action, point: contactCentre(now.corner) }),
    inProportion: was && is && (valueOf('sideMoment', before) * is.force) / was.force,
  };
}
