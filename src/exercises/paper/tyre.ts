import { outerDiameter } from '#core/tyre/dimensions.ts';
import type { MetricTyre } from '#core/tyre/tyre.ts';

/** A tyre size as three numbers, as the sidewall has them. */
export interface Size {
  readonly width: number;
  readonly aspect: number;
  readonly rim: number;
}

/** As it is written: `205/55 R16`. */
export const written = ({ width, aspect, rim }: Size): string => `${width}/${aspect} R${rim}`;

/** Outer diameter by the size, unrounded, in metres. */
export const diameterOf = (size: Size): number => outerDiameter(tyreOf(size));

export const tyreOf = ({ width, aspect, rim }: Size): MetricTyre => ({
  kind: 'metric',
  use: 'passenger',
  construction: 'radial',
  forHighSpeed: false,
  sectionWidth_mm: width,
  aspectRatio_percent: aspect,
  rimCode: rim,
  fasterThanSymbol: false,
  extraLoad: false,
});
