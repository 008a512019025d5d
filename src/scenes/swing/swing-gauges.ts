/**
 * What is read while a wheel is swung in and out: its camber, or, with the brake applied, how far the wheel has
 * turned with the carrier against the level.
 */
export const SWING_GAUGES = ['camber', 'pitch'] as const;

export type SwingGauge = (typeof SWING_GAUGES)[number];
