/**
 * The keys and words of bench documents by their number, for links. Published links name them by that number: words are added
 * at the end, and none is ever moved or taken out.
 */
export const BENCH_WORDS: readonly string[] = [
  // prettier-ignore
  ...[
    'format', 'version', 'knucklebook bench', 'car', 'variants', 'name', 'origin', 'suspension', 'drive', 'tyre',
    'corner', 'axisFrom', 'values', 'fixing', 'value', 'plusMinus', 'source', 'both', 'left', 'right',
    'training-car', 'file', 'garage', 'strut', 'double-arm', 'front', 'rear', 'four', 'pivots', 'sheet',
    'given', 'measured', 'typical', 'guess', 'spacer_mm', 'inset_mm', 'rimWidth_in', 'wheelThickness_mm',
    'camberAtUpperPivot_deg', 'camberAtCarrier_deg', 'fastener', 'thread_mm', 'pitch_mm', 'count', 'circle_mm',
    'reach_mm', 'depth_mm', 'seat', 'torque_Nm', 'bolt', 'stud', 'cone', 'ball', 'flat', 'side', 'axis', 'wheel',
    'steering', 'hub', 'lower_mm', 'upper_mm', 'inclination_deg', 'caster_deg', 'scrubRadius_mm', 'trail_mm',
    'centre_mm', 'camber_deg', 'toe_deg', 'loadedRadius_mm', 'rollingRadius_mm', 'outer_mm', 'inner_mm',
    'travelPerTurn_mm', 'rimDiameter_mm', 'assist', 'loadLineOffset_mm', 'spread_mm', 'outboard', 'inboard', 'duty',
    'kind', 'C_N', 'contactAngle_deg', 'share', 'vertical_N', 'inward_N', 'roller', 'hubUp_mm', 'halfRim_mm', 'track_mm',
    'rollingRatio', 'lowerIn_mm', 'lowerUp_mm', 'lowerAhead_mm', 'upperIn_mm', 'upperUp_mm', 'upperAhead_mm',
    'rodAhead_mm', 'wheelLoad_N', 'rowRating_N', 'tyreMake_percent', 'newInset_mm', 'camberSet_deg',
    'crossCamber_deg', 'crossCaster_deg', 'crossInclination_deg',
  ],
];
