import type { CornerDocument } from '#core/document/corner-document.ts';

/** A document with every key in it: pivots, every force, steering, hub and change. */
export const GOOD_DOCUMENT = {
  side: 'left',
  axis: { lower_mm: [8, 640, 190], upper_mm: [-22, 575, 560] },
  wheel: {
    centre_mm: [0, 720, 300],
    camber_deg: -0.5,
    toe_deg: 0.1,
    loadedRadius_mm: 300,
    rollingRadius_mm: 306,
  },
  rotation_deg: 12,
  forces: [
    { case: 'brake-on-carrier', force_N: 2500 },
    { case: 'shaft', force_N: 1800 },
    { case: 'shaft', force_N: 1800, shaftDirection: [0.02, 0.99, 0.1] },
    { case: 'impact', vector_N: [-4000, 0, 1500] },
    { case: 'lateral', force_N: 2200, pneumaticTrail_mm: 25 },
    { case: 'vertical', force_N: 3900 },
  ],
  steering: {
    outer_mm: [-120, 610, 215],
    inner_mm: [-105, 330, 235],
    travelPerTurn_mm: 48,
    rimDiameter_mm: 370,
    assist: 2,
  },
  hub: {
    loadLineOffset_mm: 4,
    spread_mm: 62,
    outboard: { kind: 'ball', C_N: 27000, contactAngle_deg: 35 },
    inboard: { kind: 'ball', C_N: 27000, contactAngle_deg: 35 },
    duty: [
      { share: 0.9, vertical_N: 3900, inward_N: 0 },
      { share: 0.05, vertical_N: 5200, inward_N: 2400 },
      { share: 0.05, vertical_N: 2600, inward_N: -900 },
    ],
  },
  change: {
    spacer_mm: 10,
    inset_mm: -5,
    loadedRadius_mm: 4,
    camberAtUpperPivot_deg: -0.5,
    camberAtCarrier_deg: 0.25,
  },
} as const satisfies CornerDocument;

/** The least that a document can be. */
export const BARE_DOCUMENT = {
  side: 'right',
  axis: { inclination_deg: 12, caster_deg: 4, scrubRadius_mm: 15, trail_mm: 20 },
  wheel: { centre_mm: [0, -720, 300], loadedRadius_mm: 300 },
} as const satisfies CornerDocument;
