import type { QuantityKind } from '#core/quantities.ts';

/** A prediction comes from the head: a fiftieth of the answer is as good as it gets. */
const SHARE = 0.02;

/** What nobody is asked to see in a figure, in SI: about half a millimetre, a sixth of a degree. */
const LEAST: Readonly<Record<QuantityKind, number>> = {
  length: 0.0006,
  angle: 0.003,
  force: 5,
  moment: 0.5,
  life: 5e5,
  distance: 1e6,
  share: 0.003,
  speed: 0.2,
};

/**
 * How far from the answer a guess may be and still count as seen coming, in SI.
 *
 * @param answer in SI
 */
export const predictionTolerance = (kind: QuantityKind, answer: number): number =>
  Math.max(SHARE * Math.abs(answer), LEAST[kind]);
