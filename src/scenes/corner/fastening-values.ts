import { clampLoad, clampRange } from '#core/fastening/clamp-load.ts';
import { engagement } from '#core/fastening/engagement.ts';
import type { FasteningQuantity } from '#core/fastening/fastening-quantities.ts';
import { clampToGrip } from '#core/fastening/friction-grip.ts';
import { USUAL } from '#core/fastening/usual.ts';
import type { LoadId } from '../parameters.ts';
import type { Standing } from './standing.ts';

/** What holds the wheel of a standing corner, in SI: by the numbers that the trade commonly reckons with. */
export function fasteningValue(id: FasteningQuantity, now: Standing): number {
  const { fixing, spacer, torque } = now;
  const middle = clampLoad(torque, USUAL.nutFactorDry.value, fixing.thread);
  switch (id) {
    case 'engagement':
      return engagement(fixing, spacer);
    case 'tighteningTorque':
      return torque;
    case 'clampLoad':
      return middle;
    case 'clampLoadOiled':
      return clampLoad(torque, USUAL.nutFactorOiled.value, fixing.thread);
    case 'clampLeast':
      return clampRange(middle, USUAL.tighteningByWrench.value).least;
    case 'clampLeastByImpact':
      return clampRange(middle, USUAL.tighteningByImpact.value).least;
    case 'clampNeeded':
      return needed(now, USUAL.frictionClean.value);
    case 'clampNeededSoiled':
      return needed(now, USUAL.frictionSoiled.value);
  }
}

/** Braking and wheel load together, and the brake torque: what tries to turn and shift the wheel on its hub. */
function needed(now: Standing, friction: number): number {
  const [brake, weight] = [forceOf(now, 'brake'), forceOf(now, 'weight')];
  const { circleRadius, count } = now.fixing;
  return clampToGrip({
    torque: brake * now.corner.loadedRadius,
    force: Math.hypot(brake, weight),
    circleRadius,
    count,
    friction,
  });
}

const forceOf = ({ loads }: Standing, id: LoadId): number =>
  loads.find((load) => load.id === id)?.force ?? 0;
