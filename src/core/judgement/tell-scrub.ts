import type { ScrubSign } from './finding.ts';
import type { Point, Telling } from './telling.ts';

/** What to say of the sign of the scrub radius: that it turns round, or that nobody knows. */
export function scrubPoint(sign: ScrubSign, verdict: keyof Telling): readonly Point[] {
  const text = textOf(sign, verdict);
  return text === undefined ? [] : [{ id: 'scrubRadius', place: sign.place, text }];
}

function textOf(sign: ScrubSign, verdict: keyof Telling): string | undefined {
  if (verdict === 'worse' && sign.flips === 'yes') {
    return sign.after.sign === 'positive'
      ? 'The scrub radius turns from negative to positive: on split friction the wheels now steer toward the side that grips, with the pull of the brakes and not against it.'
      : 'The scrub radius turns from positive to negative: on split friction the wheels now steer away from the side that grips, against the pull of the brakes, which this car was not laid out for.';
  }
  if (verdict !== 'unknown' || sign.flips === 'yes') return undefined;
  if (!sign.before.known && !sign.after.known)
    return 'The sign of the scrub radius is not known, neither before nor after: the measurements are too coarse for it.';
  if (sign.flips === 'unknown')
    return 'Whether the scrub radius turns its sign round is not known: the measurements are too coarse for it.';
  return undefined;
}
