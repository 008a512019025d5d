import { FIRST_STABILITY_days, type Memory } from './memory.ts';

/** The horizon of somebody who has named none: a term. */
export const USUAL_HORIZON_days = 120;

/**
 * The gap after a first success, in days, when something is to be known so many days from then: a third of a week's
 * horizon, a sixth of a month's, a fourteenth of a year's. A power law through the best gaps that were measured.
 *
 * Source: Cepeda, Vul, Rohrer, Wixted and Pashler 2008, Psychological Science 19, p. 1095: 20 to 40 % of a week,
 * 5 to 10 % of a year.
 */
export const firstGap_days = (horizon_days: number): number => 0.65 * horizon_days ** 0.626;

/** However well a kind is known, it is met again before so much of what is left has gone by. */
const MOST_SHARE = 1 / 2;

/**
 * The day on which a kind is due again. Gaps grow with stability, and are scaled so that the first one fits the
 * horizon: the model's gaps are proportional to stability whatever share is to be remembered, so this is asking it
 * for the share that fits. They shrink again as the day comes near, and none leads past it. What was not known comes
 * back the next day.
 *
 * @param horizonDay number of the day by which it is to be known; the usual horizon where there is none, or it is over
 */
export function dueDay({ stability_days, day, missed }: Memory, horizonDay?: number): number {
  if (missed) return day + 1;
  const left = horizonDay === undefined ? 0 : horizonDay - day;
  const horizon = left > 0 ? left : USUAL_HORIZON_days;
  const gap = firstGap_days(horizon) * (stability_days / FIRST_STABILITY_days);
  return day + Math.max(1, Math.round(Math.min(gap, MOST_SHARE * horizon)));
}
