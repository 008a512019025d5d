import type { Finding, Sure } from './finding.ts';
import type { JudgedId } from './judged-quantities.ts';
import type { Point, Telling } from './telling.ts';

/** A bound that a result after the change is held against, with what to say where it is passed, or may be. */
interface Limit {
  readonly id: JudgedId;
  readonly bound: number;
  readonly allowed: 'above' | 'below';
  readonly onPassed: string;
  readonly onUnknown: string;
}

const LIMITS: readonly Limit[] = [
  {
    id: 'engagementSpare',
    bound: 0,
    allowed: 'above',
    onPassed:
      'The threads hold over less than one diameter, which handbooks ask for in steel: other fasteners are needed, or another part.',
    onUnknown:
      'Whether the threads still hold over one diameter, which handbooks ask for in steel, is not known: measure their reach.',
  },
  {
    id: 'loadShare',
    bound: 1,
    allowed: 'below',
    onPassed: 'The wheel load is above what the load index of the tyre allows.',
    onUnknown:
      'Whether the wheel load stays below what the load index of the tyre allows is not known.',
  },
  {
    id: 'inboardRadial',
    bound: 0,
    allowed: 'above',
    onPassed:
      'Straight ahead the load line lies outboard of both rows of the bearing: the inboard row is loaded from the other side.',
    onUnknown:
      'Whether the load line still lies between the two rows of the bearing straight ahead is not known.',
  },
];

/** What of a judgement passes a bound, or may pass it. */
export function limitPoints(
  findings: readonly Finding[],
  verdict: keyof Telling,
): readonly Point[] {
  return LIMITS.flatMap(({ id, ...limit }) =>
    findings
      .filter((finding) => finding.id === id)
      .flatMap(({ place, after }): readonly Point[] => {
        const passes = passesLimit(after, limit);
        if (verdict === 'worse' && passes === 'yes') return [{ id, place, text: limit.onPassed }];
        if (verdict === 'unknown' && passes === 'unknown')
          return [{ id, place, text: limit.onUnknown }];
        return [];
      }),
  );
}

function passesLimit(
  { least, most }: Sure,
  { bound, allowed }: Pick<Limit, 'bound' | 'allowed'>,
): 'yes' | 'no' | 'unknown' {
  const [good, bad] =
    allowed === 'above' ? [least >= bound, most < bound] : [most <= bound, least > bound];
  if (bad) return 'yes';
  return good ? 'no' : 'unknown';
}
