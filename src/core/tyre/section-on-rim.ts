/** A tyre's section grows by about 5 mm for each half inch of rim width. */
const SHARE = 5 / 12.7;

/**
 * By how much a tyre's section grows on a wider rim, in metres: 5 mm for each half inch, so each sidewall follows
 * the rim's edge by less than half of its way.
 *
 * @param rimGain new rim width less old, in metres
 *
 * Source: tyre makers' technical pages.
 */
export const sectionGain = (rimGain: number): number => SHARE * rimGain;
