import type { Range } from './read-number.ts';

/**
 * What a document's numbers may be: wide enough for anything with a steered wheel, from a soapbox to a
 * dump truck, and narrow enough that metres in place of millimetres do not pass where a length has a natural size.
 */
export const RANGES = {
  coordinate: { least: -10_000, most: 10_000, unit: 'mm' },
  wheelRadius: { least: 50, most: 2000, unit: 'mm' },
  camber: { least: -30, most: 30, unit: 'degrees' },
  toe: { least: -30, most: 30, unit: 'degrees' },
  rotation: { least: -80, most: 80, unit: 'degrees' },
  axisLean: { least: -60, most: 60, unit: 'degrees' },
  offset: { least: -500, most: 500, unit: 'mm' },
  force: { least: -1e6, most: 1e6, unit: 'N' },
  wheelLoad: { least: 0, most: 1e6, unit: 'N' },
  pneumaticTrail: { least: -500, most: 500, unit: 'mm' },
  /** Of any length: only the direction counts. */
  direction: { least: -1e6, most: 1e6, unit: '' },
  travelPerTurn: { least: 5, most: 500, unit: 'mm' },
  rimDiameter: { least: 100, most: 1000, unit: 'mm' },
  assist: { least: 0.1, most: 1000, unit: '' },
  spread: { least: 5, most: 1000, unit: 'mm' },
  dynamicRating: { least: 100, most: 1e7, unit: 'N' },
  /** The row's kind narrows this further. */
  contactAngle: { least: 0, most: 90, unit: 'degrees' },
  share: { least: 0, most: 1, unit: '' },
  lengthChange: { least: -500, most: 500, unit: 'mm' },
  camberChange: { least: -20, most: 20, unit: 'degrees' },
  /** Between the two pivots. */
  pivotDistance: { least: 20, most: 2000, unit: 'mm' },
  tieRodLength: { least: 20, most: 3000, unit: 'mm' },
  /** From the steering axis to a point of the carrier. */
  carrierReach: { least: 0, most: 500, unit: 'mm' },
} as const satisfies Record<string, Range>;
