/** Slope of the Weibull distribution of bearing lives that the standard's tables rest on. */
const WEIBULL_SLOPE = 1.5;

/** ISO 281:2007 lets every bearing live at least 5 % of L10; the edition of 1990 knew no minimum life. */
export const MINIMUM_LIFE_2007 = 0.05;
export const MINIMUM_LIFE_1990 = 0;

/**
 * Life adjustment factor for reliability a1: the fraction of L10 that a part S of like bearings reaches,
 * a1 = m + (1 − m) (ln(1/S) / ln(1/0.9))^(1/1.5), with the minimum life m as a fraction of L10.
 *
 * @param reliability S: 0.9 up to 0.9995, where the standard's table ends
 * @param minimumLife m, 0.05 as in ISO 281:2007; 0 gives the older table of ISO 281:1990
 * @throws RangeError outside that range of reliability
 *
 * Source: ISO/TR 1281-2 (from memory); reproduces both printed tables to their last digit.
 */
export function reliabilityFactor(reliability: number, minimumLife = MINIMUM_LIFE_2007): number {
  if (!(reliability >= 0.9 && reliability <= 0.9995))
    throw new RangeError(`a reliability of ${reliability} is outside 0.9 to 0.9995`);
  const spread = (Math.log(reliability) / Math.log(0.9)) ** (1 / WEIBULL_SLOPE);
  return minimumLife + (1 - minimumLife) * spread;
}

/**
 * Adjusted rating life L_na = a1 L10, in the unit of `life`: what the part `reliability` of like
 * bearings reaches. Range and errors as for `reliabilityFactor`.
 */
export const adjustedLife = (life: number, reliability: number): number =>
  reliabilityFactor(reliability) * life;
