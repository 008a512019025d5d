const CROSS = {
  unit: 'deg',
  group: 'alignment',
  tool: 'alignment sheet',
  positive: 'more on the left',
  least: -10,
  most: 10,
} as const;

/**
 * What the front wheels differ by as the car stands, left less right, as alignment sheets call it. Without them left and right
 * are mirror images.
 */
export const CROSS_INPUTS = {
  crossCamber_deg: { name: 'cross camber, left less right', ...CROSS },
  crossCaster_deg: { name: 'cross caster, left less right', ...CROSS },
  crossInclination_deg: { name: 'cross inclination, left less right', ...CROSS },
} as const;

export type CrossId = keyof typeof CROSS_INPUTS;

export const CROSS_IDS = Object.keys(CROSS_INPUTS) as readonly CrossId[];

export const isCross = (id: string): id is CrossId => Object.hasOwn(CROSS_INPUTS, id);

/** Whether anything is known that left and right differ by. */
export const standsApart = (values: Readonly<Partial<Record<CrossId, unknown>>>): boolean =>
  CROSS_IDS.some((id) => values[id] !== undefined);
