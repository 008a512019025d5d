import type { Anatomy } from '#core/car/anatomy.ts';
import { brakeDisc } from '../corner/carrier-outlines.ts';

/** Outer radius of the brake disc, in millimetres: as the section through the corner has it. */
export const discRadius = (anatomy: Anatomy): number =>
  Math.max(...brakeDisc(anatomy).map(([, up]) => up));
