/** An even scale: where a number lies on paper. d3's own would bring colours, dates and formats along. */
export interface Scale {
  (value: number): number;
  /** The numbers at its two ends. */
  readonly domain: readonly [number, number];
}

/** The scale that takes the ends of a domain to the ends of a range. */
export function scale(domain: Scale['domain'], range: readonly [number, number]): Scale {
  const [from, to] = domain;
  const [start, end] = range;
  const each = (end - start) / (to - from);
  return Object.assign((value: number) => start + (value - from) * each, { domain });
}
