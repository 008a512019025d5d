/** The largest load of one tyre in kg, for the load indices from `FIRST_LOAD_INDEX` on. */
const LOADS_KG = [
  ...[250, 257, 265, 272, 280, 290, 300, 307, 315, 325], // 60 to 69
  ...[335, 345, 355, 365, 375, 387, 400, 412, 425, 437], // 70 to 79
  ...[450, 462, 475, 487, 500, 515, 530, 545, 560, 580], // 80 to 89
  ...[600, 615, 630, 650, 670, 690, 710, 730, 750, 775], // 90 to 99
  ...[800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030], // 100 to 109
  ...[1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360], // 110 to 119
  ...[1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850], // 120 to 129
  1900, // 130
] as const;

export const FIRST_LOAD_INDEX = 60;
export const LAST_LOAD_INDEX = FIRST_LOAD_INDEX + LOADS_KG.length - 1;

/**
 * The largest load that one tyre may carry, in kg, at the pressure and up to the speed that its maker
 * allows for it. Not the wheel load of a car: that must stay below.
 *
 * @param index load index, a whole number from 60 to 130
 * @throws RangeError for any other index
 * Source: ISO 4000-1 and UN Regulation 30, annex 4, as reprinted by tyre dealers.
 */
export function loadCapacity_kg(index: number): number {
  const load = LOADS_KG[index - FIRST_LOAD_INDEX];
  if (load !== undefined) return load;
  throw new RangeError(
    `load index ${index}; allowed: ${FIRST_LOAD_INDEX} to ${LAST_LOAD_INDEX}, whole numbers`,
  );
}
