/**
 * What a unit measures. `si` is the unit of the calculation core, `noun` is how a sentence names a
 * value of that kind.
 */
export const DIMENSIONS = {
  length: { si: 'm', noun: 'a length' },
  /** How far a car has gone. The same as a length in physics; its own entry so that fields offer km and not mm. */
  distance: { si: 'm', noun: 'a distance' },
  angle: { si: 'rad', noun: 'an angle' },
  force: { si: 'N', noun: 'a force' },
  moment: { si: 'N·m', noun: 'a moment' },
  mass: { si: 'kg', noun: 'a mass' },
  revolutions: { si: 'rev', noun: 'a number of revolutions' },
  pressure: { si: 'Pa', noun: 'a pressure' },
  speed: { si: 'm/s', noun: 'a speed' },
  ratio: { si: '1', noun: 'a ratio' },
} as const satisfies Record<string, { readonly si: string; readonly noun: string }>;

export type Dimension = keyof typeof DIMENSIONS;

/** Whether values of the two dimensions convert into each other: a length and a distance do. */
export const convertible = (a: Dimension, b: Dimension): boolean =>
  DIMENSIONS[a].si === DIMENSIONS[b].si;
