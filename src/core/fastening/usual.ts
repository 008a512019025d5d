/** A number that the trade works with, and who says so. */
export interface UsualNumber {
  readonly value: number;
  readonly source: string;
}

/** What joints are commonly reckoned with: orders of size, never a maker’s instruction. */
export const USUAL = {
  /** Nut factor of clean, dry, plated steel. */
  nutFactorDry: { value: 0.2, source: 'Shigley, chapter 8, from memory' },
  /** The same with oil on the thread. */
  nutFactorOiled: { value: 0.14, source: 'handbooks give 0.1 to 0.18, from memory' },
  /** Friction in the thread and under the head, lightly oiled as delivered. */
  frictionOfThread: { value: 0.12, source: 'handbooks give 0.1 to 0.16, from memory' },
  /** Largest over smallest clamp load: torque wrench, and impact wrench. */
  tighteningByWrench: { value: 1.6, source: 'VDI 2230, tightening factor, from memory' },
  tighteningByImpact: { value: 3, source: 'VDI 2230 gives 2.5 to 4, from memory' },
  /** Friction between hub face and wheel: clean and dry, and with paint, rust or oil between them. */
  frictionClean: { value: 0.2, source: 'handbooks, steel on aluminium, from memory' },
  frictionSoiled: { value: 0.1, source: 'handbooks, greasy faces, from memory' },
} as const satisfies Record<string, UsualNumber>;
