import type { Fault } from '../fault.ts';
import type { Construction } from './tyre.ts';

const CONSTRUCTIONS: ReadonlyMap<string, Construction> = new Map([
  ['R', 'radial'],
  ['ZR', 'radial'],
  ['D', 'diagonal'],
  ['-', 'diagonal'],
  ['B', 'bias-belted'],
]);

/** The construction that the letters before the rim code stand for, undefined for other letters. */
export const constructionOf = (letters: string | undefined): Construction | undefined =>
  CONSTRUCTIONS.get(letters ?? '');

export function constructionFault(letters: string | undefined, path: string): readonly Fault[] {
  if (constructionOf(letters) !== undefined) return [];
  const wrong =
    letters === undefined
      ? 'has no letter before the rim code'
      : `has “${letters}” before the rim code`;
  return [{ path, wrong, allowed: 'R or ZR (radial), D or - (diagonal), B (bias-belted)' }];
}

/** Metric section widths end in 5: the steps of ISO 4000-1 (from memory). */
export function metricWidthFault(width_mm: number, path: string): readonly Fault[] {
  if (width_mm >= 105 && width_mm <= 455 && width_mm % 10 === 5) return [];
  const allowed = 'widths from 105 to 455 mm that end in 5';
  return [{ path, wrong: `has the section width ${width_mm}`, allowed }];
}

export function aspectFault(aspect_percent: number, path: string): readonly Fault[] {
  if (aspect_percent >= 20 && aspect_percent <= 95 && aspect_percent % 5 === 0) return [];
  const allowed = 'multiples of 5 from 20 to 95, in percent of the width';
  return [{ path, wrong: `has the aspect ratio ${aspect_percent}`, allowed }];
}

export function rimCodeFault(code: number, path: string): readonly Fault[] {
  if (code >= 8 && code <= 30 && code % 0.5 === 0) return [];
  return [{ path, wrong: `has the rim code ${code}`, allowed: 'whole or half codes from 8 to 30' }];
}

/** A flotation size in inches; its sidewalls must have some height left over the rim. */
export function flotationFaults(
  diameter_in: number,
  width_in: number,
  rimCode: number,
  path: string,
): readonly Fault[] {
  const faults: Fault[] = [];
  if (!(diameter_in >= 20 && diameter_in <= 60)) {
    const wrong = `has the outer diameter ${diameter_in}`;
    faults.push({ path, wrong, allowed: '20 to 60 inches' });
  } else if (diameter_in < rimCode + 4) {
    const wrong = `has the outer diameter ${diameter_in} on the rim code ${rimCode}`;
    faults.push({ path, wrong, allowed: 'a diameter at least 4 inches above the rim code' });
  }
  if (!(width_in >= 5 && width_in <= 20)) {
    faults.push({ path, wrong: `has the section width ${width_in}`, allowed: '5 to 20 inches' });
  }
  return faults;
}
