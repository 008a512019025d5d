import { isAxleLoadId } from './axle/axle-parameters.ts';
import {
  allowedValue,
  isDrivingId,
  isLoadId,
  PARAMETER_IDS,
  type ParameterId,
} from './parameters.ts';

/** How a reader has set a corner: every parameter's shift from the car as it stands, in millimetres, degrees and newtons. */
export type Setting = Readonly<Record<ParameterId, number>>;

/** The car as it stands. */
export const AS_IT_STANDS: Setting = Object.fromEntries(
  PARAMETER_IDS.map((id) => [id, 0]),
) as Setting;

/** The setting with some parameters replaced, each brought into its bounds. */
export function adjusted(setting: Setting, changes: Partial<Setting>): Setting {
  const next = { ...setting };
  for (const id of PARAMETER_IDS) {
    const value = changes[id];
    if (value !== undefined) next[id] = allowedValue(id, value);
  }
  return next;
}

export const sameSetting = (a: Setting, b: Setting): boolean =>
  PARAMETER_IDS.every((id) => a[id] === b[id]);

/** Whether the car itself differs from how it stands, apart from steering and loads: then there is a before to show. */
export const isChanged = (setting: Setting): boolean =>
  PARAMETER_IDS.some((id) => setting[id] !== 0 && !comesAndGoes(id));

/** The car as it stands, steered and loaded as it is now: what a change is compared with. */
export const unchanged = (setting: Setting): Setting =>
  PARAMETER_IDS.every((id) => setting[id] === 0 || !comesAndGoes(id))
    ? AS_IT_STANDS
    : (Object.fromEntries(
        PARAMETER_IDS.map((id) => [id, comesAndGoes(id) ? setting[id] : 0]),
      ) as Setting);

/** Whether the car itself is the same, however it is steered and loaded. */
export const sameCar = (a: Setting, b: Setting): boolean =>
  PARAMETER_IDS.every((id) => comesAndGoes(id) || a[id] === b[id]);

/** Every parameter a share of the way from one setting to another, off its grid. */
export const between = (from: Setting, to: Setting, share: number): Setting =>
  Object.fromEntries(
    PARAMETER_IDS.map((id) => [id, from[id] + share * (to[id] - from[id])]),
  ) as Setting;

/** A share of a change, from the car as it stands at 0 to all of it at 1, on a car steered and loaded as it is now. */
export const partOf = (change: Setting, now: Setting, share: number): Setting => {
  const part = between(unchanged(change), change, share);
  return Object.fromEntries(
    PARAMETER_IDS.map((id) => [id, comesAndGoes(id) ? now[id] : part[id]]),
  ) as Setting;
};

/** What driving does to a corner, as against what a workshop does. */
const comesAndGoes = (id: ParameterId): boolean =>
  id === 'steer' || isLoadId(id) || isDrivingId(id) || isAxleLoadId(id);
