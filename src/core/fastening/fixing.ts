import type { MetricThread } from './thread.ts';

/** How a wheel rests under its fasteners. The two faces have to be of one kind. */
export type Seat = 'cone' | 'ball' | 'flat';

/** What holds a wheel on its hub. Lengths in metres. */
export interface Fixing {
  /** A bolt goes into a thread in the hub; on a stud, which stays in the hub, goes a nut. */
  readonly fastener: 'bolt' | 'stud';
  readonly thread: MetricThread;
  readonly count: number;
  /** Radius of the circle on which they stand. */
  readonly circleRadius: number;
  /** How far the thread reaches past the wheel, without a spacer: into the hub, or out of the wheel toward the nut. */
  readonly reach: number;
  /** Length of the counterpart’s thread: of the hole in the hub, or of the nut. */
  readonly depth: number;
  /** Material of the wheel between seat and hub face. */
  readonly wheelThickness: number;
  readonly seat: Seat;
  /** Tightening torque that the maker names, in newton metres. */
  readonly torque: number;
}
