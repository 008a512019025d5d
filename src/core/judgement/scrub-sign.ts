import type { Finding, ScrubSign, SignKnown, Sure } from './finding.ts';

/** A sign is called known where it holds in so many cases. */
const SURE_ENOUGH = 0.95;

/**
 * What is known of the sign of the scrub radius before and after a change, and whether the change turns it round.
 *
 * How likely it turns is how far the two chances lie apart, |P(after > 0) − P(before > 0)|: exact where a change moves
 * the scrub radius the same way whatever the car, as wheels, spacers and tyres do.
 *
 * @param above the chance that a result lies above nought
 */
export function scrubSigns(
  findings: readonly Finding[],
  above: (sure: Sure, of: 'before' | 'after', finding: Finding) => number,
): readonly ScrubSign[] {
  return findings.flatMap((finding): readonly ScrubSign[] => {
    const { id, place, before, after } = finding;
    if (id !== 'scrubRadius' || place === 'axle') return [];
    const chances = {
      before: above(before, 'before', finding),
      after: above(after, 'after', finding),
    };
    const chanceOfFlip = Math.abs(chances.after - chances.before);
    return [
      {
        place,
        before: signKnown(chances.before),
        after: signKnown(chances.after),
        chanceOfFlip,
        flips: flipsOf(chanceOfFlip),
      },
    ];
  });
}

function signKnown(above: number): SignKnown {
  const chance = Math.max(above, 1 - above);
  return {
    sign: above >= 0.5 ? 'positive' : 'negative',
    chance,
    known: chance >= SURE_ENOUGH,
  };
}

function flipsOf(chance: number): ScrubSign['flips'] {
  if (chance >= SURE_ENOUGH) return 'yes';
  return chance <= 1 - SURE_ENOUGH ? 'no' : 'unknown';
}
