/**
 * Speed symbols and the speed in km/h up to which a tyre may carry the load of its load index. Not in
 * alphabetical order: H was given before the letters around it.
 *
 * Source: UN Regulation 30, paragraph 2.29, as reprinted by tyre dealers.
 */
export const SPEED_SYMBOLS_KMH = {
  F: 80,
  G: 90,
  J: 100,
  K: 110,
  L: 120,
  M: 130,
  N: 140,
  P: 150,
  Q: 160,
  R: 170,
  S: 180,
  T: 190,
  U: 200,
  H: 210,
  V: 240,
  W: 270,
  Y: 300,
} as const;

export type SpeedSymbol = keyof typeof SPEED_SYMBOLS_KMH;

export const isSpeedSymbol = (letter: string): letter is SpeedSymbol =>
  Object.hasOwn(SPEED_SYMBOLS_KMH, letter);

/** The speed of a symbol in m/s. */
export const ratedSpeed = (symbol: SpeedSymbol): number => SPEED_SYMBOLS_KMH[symbol] / 3.6;
