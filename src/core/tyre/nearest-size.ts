import { fromSI } from '../units/convert.ts';
import { outerDiameter } from './dimensions.ts';
import { aspectFault, flotationFaults, metricWidthFault } from './size-limits.ts';
import type { FlotationTyre, MetricTyre, Tyre } from './tyre.ts';

/** Section widths that are looked at beside the tyre’s own, in millimetres more or less. */
const WIDER_mm = [0, -10, 10, -20, 20] as const;

/** What a millimetre of diameter weighs against one of section width: another width moves more than the road. */
const WIDTH_WEIGHT = 0.4;

/**
 * The size on the same rim whose outer diameter comes nearest to so many times that of a tyre, preferring the same section
 * width; the tyre itself where no other size comes nearer. What it carries and how fast it may run is another tyre’s, and
 * left open.
 *
 * @param growth wanted outer diameter over that of the tyre, more than 0
 */
export function nearestSize(tyre: Tyre, growth: number): Tyre {
  const wanted = fromSI(outerDiameter(tyre) * growth, 'mm');
  const miss = (one: Tyre): number => Math.abs(fromSI(outerDiameter(one), 'mm') - wanted);
  const cost = (one: Tyre): number => miss(one) + WIDTH_WEIGHT * widthApart(one, tyre);
  const others = tyre.kind === 'metric' ? metricSizes(tyre) : flotationSizes(tyre);
  const nearest = others.reduce((best, one) => (cost(one) < cost(best) ? one : best), tyre);
  return nearest === tyre ? tyre : withoutService(nearest);
}

function metricSizes(tyre: MetricTyre): MetricTyre[] {
  const aspects = Array.from({ length: 16 }, (_, i) => 20 + 5 * i);
  return WIDER_mm.flatMap((wider) =>
    aspects.map((aspectRatio_percent) => ({
      ...tyre,
      sectionWidth_mm: tyre.sectionWidth_mm + wider,
      aspectRatio_percent,
    })),
  ).filter(
    (one) =>
      metricWidthFault(one.sectionWidth_mm, '').length === 0 &&
      aspectFault(one.aspectRatio_percent, '').length === 0 &&
      one.sectionWidth_mm * one.aspectRatio_percent !==
        tyre.sectionWidth_mm * tyre.aspectRatio_percent,
  );
}

/** Flotation sizes go by whole inches of diameter. */
const flotationSizes = (tyre: FlotationTyre): FlotationTyre[] =>
  [-3, -2, -1, 1, 2, 3]
    .map((more) => ({ ...tyre, outerDiameter_in: tyre.outerDiameter_in + more }))
    .filter(
      (one) =>
        flotationFaults(one.outerDiameter_in, one.sectionWidth_in, one.rimCode, '').length === 0,
    );

const widthApart = (a: Tyre, b: Tyre): number =>
  a.kind === 'metric' && b.kind === 'metric' ? Math.abs(a.sectionWidth_mm - b.sectionWidth_mm) : 0;

function withoutService(tyre: Tyre): Tyre {
  const { loadIndex: _, twinLoadIndex: __, speedSymbol: ___, ...size } = tyre;
  return { ...size, fasterThanSymbol: false, extraLoad: false };
}
