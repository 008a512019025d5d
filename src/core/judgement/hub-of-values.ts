import type { DutyPhase } from '../bearing/hub-rating.ts';
import type { Hub } from '../bearing/hub.ts';
import { bearingRow, type Row } from '../bearing/row.ts';
import type { FittedCar, Values } from './fitted-car.ts';

/**
 * The wheel bearing that the inputs describe; undefined where they make none. What the rows differ by in rating and angle stays.
 *
 * @param shift by how much the load line has moved outboard, in metres
 */
export function hubOfValues(
  { hub: { hub } }: FittedCar,
  value: Values,
  shift: number,
): Hub | undefined {
  const rating = value('rowRating_N');
  if (!(rating > 0)) return undefined;
  const angle = value('contactAngle_deg');
  const row = ({ kind, dynamicRating, contactAngle }: Row): Row | undefined => {
    const now = bearingRow(
      kind,
      rating * (dynamicRating / hub.outboard.dynamicRating),
      angle + contactAngle - hub.outboard.contactAngle,
    );
    return now.ok ? now.value : undefined;
  };
  const outboard = row(hub.outboard);
  const inboard = hub.inboard === hub.outboard ? outboard : row(hub.inboard);
  const spread = value('spread_mm');
  if (outboard === undefined || inboard === undefined || !(spread > 0)) return undefined;
  return {
    loadLineOffset: value('loadLineOffset_mm') + shift,
    spread,
    outboard,
    inboard,
  };
}

/** The car’s duty cycle under another wheel load: every load of it in proportion. */
export const dutyUnder = ({ hub, dutyLoad }: FittedCar, load: number): readonly DutyPhase[] =>
  hub.duty.map(({ share, vertical, inward }) => ({
    share,
    vertical: (vertical * load) / dutyLoad,
    inward: (inward * load) / dutyLoad,
  }));
