import type { Band } from '#core/car/alignment.ts';
import { rounded } from '../paper/frame.ts';

/** A short scale with what is allowed in its middle and a mark where the value lies: places from 0, left, to 100. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly mark: number;
  /** Where the value is off the scale: the mark then stands at its end. */
  readonly beyond: 'below' | 'above' | undefined;
  /** Where the car was set, and where the reader thought it would be; absent where that says nothing. */
  readonly before: number | undefined;
  readonly guess: number | undefined;
}

/** What a scale marks besides the value, in radians. */
export interface OtherMarks {
  readonly before?: number | undefined;
  readonly guess?: number | undefined;
}

/** How much of the scale the band takes: leaves room on both sides for a wheel that is well out. */
const SHARE = 0.4;

/** How near to an end a mark can stand and still be whole. */
const EDGE = 5;

/** Lays values out on the scale of a band, all in radians. */
export function scaleOf({ least, most }: Band, value: number, others: OtherMarks = {}): Scale {
  const place = (angle: number): number =>
    50 + (100 * SHARE * (angle - (least + most) / 2)) / (most - least);
  const within = (at: number): number => rounded(Math.min(100 - EDGE, Math.max(EDGE, at)));
  const placed = (angle: number | undefined): number | undefined =>
    angle === undefined ? undefined : within(place(angle));
  const at = place(value);
  return {
    from: rounded(place(least)),
    to: rounded(place(most)),
    mark: within(at),
    beyond: at < EDGE ? 'below' : at > 100 - EDGE ? 'above' : undefined,
    before: placed(others.before),
    guess: placed(others.guess),
  };
}
