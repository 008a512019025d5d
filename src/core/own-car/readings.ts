/** What is read on one front corner with straightedge, plumb lines, tape and protractor, and how it is called. */
export interface ReadingAbout {
  readonly name: string;
  readonly kind: 'length' | 'angle';
  /** What it is read with. */
  readonly tool: string;
}

/**
 * The readings of one corner, seen from the front, in the order in which models take them. Lengths across run
 * inboard from the rim line: a straightedge on the floor under the outer edge of the rim, at the height of the
 * wheel centre. Heights are above the floor.
 */
export const READINGS = {
  halfRim: { name: 'half the rim’s overall width', kind: 'length', tool: 'straightedge and tape' },
  lowerIn: { name: 'rim line to lower pivot', kind: 'length', tool: 'plumb line and tape' },
  upperIn: { name: 'rim line to upper pivot', kind: 'length', tool: 'plumb line and tape' },
  lowerUp: { name: 'height of the lower pivot', kind: 'length', tool: 'tape' },
  upperUp: { name: 'height of the upper pivot', kind: 'length', tool: 'tape' },
  hubUp: { name: 'height of the wheel centre', kind: 'length', tool: 'tape' },
  camber: { name: 'camber', kind: 'angle', tool: 'straightedge and protractor' },
} as const satisfies Record<string, ReadingAbout>;

export type ReadingId = keyof typeof READINGS;

export const READING_IDS = Object.keys(READINGS) as readonly ReadingId[];

export const isReadingId = (id: string): id is ReadingId => Object.hasOwn(READINGS, id);

/** Every reading, or the ± of every reading: metres and radians. */
export type Readings = Readonly<Record<ReadingId, number>>;

/**
 * How sure a careful person with simple tools can be, as ±, each value within as likely as the next.
 *
 * Source: common practice, no source: a plumb line swings, pivots are found by eye, a protractor reads quarters.
 */
export const USUAL_DOUBT: Readings = {
  halfRim: 0.0015,
  lowerIn: 0.003,
  upperIn: 0.004,
  lowerUp: 0.003,
  upperUp: 0.004,
  hubUp: 0.002,
  camber: (0.3 * Math.PI) / 180,
};
