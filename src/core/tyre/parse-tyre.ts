import { failure, success, type Fault, type Outcome } from '../fault.ts';
import { plainText } from '../plain-text.ts';
import { parseServiceDescription } from './service-description.ts';
import {
  aspectFault,
  constructionFault,
  constructionOf,
  flotationFaults,
  metricWidthFault,
  rimCodeFault,
} from './size-limits.ts';
import type { FlotationTyre, MetricTyre, Tyre } from './tyre.ts';

// Both patterns only cut the text into its parts; whether a part makes sense is checked afterwards, so
// that the fault can name it.
const RIM_AND_REST =
  '(?<build>ZR|[A-Z]|-|/)? ?(?<rim>\\d+(?:[.,]\\d+)?) ?(?<suffix>C|LT)?(?= |$|\\() ?(?<service>.*)$';
const METRIC = new RegExp(
  `^(?<prefix>[A-Z]*) ?(?<width>\\d+) ?/ ?(?<aspect>\\d+) ?${RIM_AND_REST}`,
);
const FLOTATION = new RegExp(
  `^(?<diameter>\\d+(?:[.,]\\d+)?) ?[X·] ?(?<width>\\d+(?:[.,]\\d+)?) ?${RIM_AND_REST}`,
);

const USES: Readonly<Record<string, MetricTyre['use']>> = {
  '': 'passenger',
  P: 'P',
  LT: 'LT',
  C: 'C',
  T: 'T',
  HL: 'HL',
};

type Parts = Readonly<Record<string, string | undefined>>;

/**
 * Reads the size designation on a tyre's side: metric (`205/55 R16 91V`, `P215/65R15`, `LT265/70R17
 * 121/118S`, `195/70 R15C 104/102R`, `225/45 ZR17 (91Y)`) or flotation (`31x10.50R15LT 109Q`). Spaces,
 * small letters and decimal commas do not matter.
 *
 * @param text as typed
 * @param path where the text comes from, for the faults
 * @returns the tyre, or every fault found, each with what is allowed
 * Source of the notation: ISO 4000-1 and UN Regulation 30, paragraph 2 (from memory).
 */
export function parseTyre(text: string, path = 'tyre'): Outcome<Tyre> {
  const plain = plainText(text).toUpperCase();
  const metric = METRIC.exec(plain)?.groups;
  if (metric) return metricTyre(metric, path);
  const flotation = FLOTATION.exec(plain)?.groups;
  if (flotation) return flotationTyre(flotation, path);
  return failure({
    path,
    wrong: plain === '' ? 'is missing' : `is “${plain}”`,
    allowed: 'a size such as 205/55 R16 91V, LT265/70 R17 or 31x10.50 R15 LT',
  });
}

function metricTyre(parts: Parts, path: string): Outcome<MetricTyre> {
  const { prefix = '', suffix = '', build } = parts;
  const width = number(parts['width']);
  const aspect = number(parts['aspect']);
  const rimCode = number(parts['rim']);
  const use = USES[suffix || prefix];
  const construction = constructionOf(build);
  const service = parseServiceDescription(parts['service'] ?? '', path);
  const faults = [
    ...useFault(prefix, suffix, path),
    ...metricWidthFault(width, path),
    ...aspectFault(aspect, path),
    ...constructionFault(build, path),
    ...rimCodeFault(rimCode, path),
    ...(service.ok ? [] : service.faults),
  ];
  if (faults.length > 0 || !service.ok || use === undefined || construction === undefined) {
    return failure(...faults);
  }
  return success({
    kind: 'metric',
    use,
    sectionWidth_mm: width,
    aspectRatio_percent: aspect,
    rimCode,
    construction,
    forHighSpeed: build === 'ZR',
    ...service.value,
  });
}

function flotationTyre(parts: Parts, path: string): Outcome<FlotationTyre> {
  const { build } = parts;
  const diameter = number(parts['diameter']);
  const width = number(parts['width']);
  const rimCode = number(parts['rim']);
  const construction = constructionOf(build);
  const service = parseServiceDescription(parts['service'] ?? '', path);
  const faults = [
    ...flotationFaults(diameter, width, rimCode, path),
    ...constructionFault(build, path),
    ...rimCodeFault(rimCode, path),
    ...(service.ok ? [] : service.faults),
  ];
  if (faults.length > 0 || !service.ok || construction === undefined) return failure(...faults);
  return success({
    kind: 'flotation',
    outerDiameter_in: diameter,
    sectionWidth_in: width,
    rimCode,
    construction,
    forHighSpeed: build === 'ZR',
    ...service.value,
  });
}

function useFault(prefix: string, suffix: string, path: string): readonly Fault[] {
  const allowed = 'nothing, P, LT, T or HL before the width, or C or LT behind the rim code';
  if (prefix !== '' && suffix !== '' && prefix !== suffix) {
    return [{ path, wrong: `has ${prefix} in front and ${suffix} behind`, allowed }];
  }
  if (Object.hasOwn(USES, suffix || prefix) && prefix !== 'C') return [];
  return [{ path, wrong: `starts with ${prefix}`, allowed }];
}

const number = (digits: string | undefined): number => Number((digits ?? '').replace(',', '.'));
