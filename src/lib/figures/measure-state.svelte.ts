import type { CornerModel } from '#core/car/car.ts';
import { asRead } from '#core/own-car/as-read.ts';
import { findingOf } from '#core/own-car/findings.ts';
import { frontGeometry, RESULT_IDS, type ResultId } from '#core/own-car/front-geometry.ts';
import { measurementsOf, readingsOf } from '#core/own-car/readings-of.ts';
import { USUAL_DOUBT, type ReadingId, type Readings } from '#core/own-car/readings.ts';
import { tried } from '#core/uncertainty/monte-carlo.ts';
import { shareAbove, spreadOf } from '#core/uncertainty/spread.ts';
import type { Found } from '#scenes/measure/results-drawing.ts';
import { seeded } from './seeded';

const TRIALS = 10_000;
const SEED = 1;

/** Somebody measuring one corner: what has been read, how sure of it they are, and what that comes to. */
export class MeasureState {
  readonly #start: Readings;
  readings = $state.raw<Readings>(USUAL_DOUBT);
  doubts = $state.raw<Readings>(USUAL_DOUBT);
  /** The reading that is looked at, and the result that its share is taken of. */
  reading = $state<ReadingId>('lowerIn');
  result = $state<ResultId>('scrubRadius');
  readonly #inputs = $derived.by(() => measurementsOf(this.readings, this.doubts));
  readonly #trials = $derived.by(() =>
    tried({
      inputs: this.#inputs,
      model: frontGeometry,
      results: RESULT_IDS.length,
      count: TRIALS,
      uniform: seeded(SEED),
    }),
  );
  readonly found = $derived.by(
    () =>
      Object.fromEntries(
        RESULT_IDS.map((id, i) => [
          id,
          {
            finding: findingOf(id, this.readings, this.doubts),
            spread: spreadOf(this.#trials[i] ?? new Float64Array(2)),
          },
        ]),
      ) as Found,
  );
  /** In how many of a hundred trials the axis meets the road inboard. */
  readonly inboardShare = $derived.by(() => shareAbove(this.#trials[0] ?? new Float64Array(1)));

  /** What the first readings came to: the results’ scales lie about it and keep still. */
  readonly about: Readonly<Record<ResultId, number>>;

  constructor({ corner, anatomy }: CornerModel) {
    this.#start = asRead(readingsOf(corner, anatomy.rimWidth / 2000));
    this.readings = this.#start;
    this.about = Object.fromEntries(
      RESULT_IDS.map((id) => [id, findingOf(id, this.#start, USUAL_DOUBT).value]),
    ) as Record<ResultId, number>;
  }

  /** The reading as it was taken at first. */
  startOf(id: ReadingId): number {
    return this.#start[id];
  }

  read(id: ReadingId, value: number): void {
    this.readings = { ...this.readings, [id]: value };
  }

  doubt(id: ReadingId, value: number): void {
    this.doubts = { ...this.doubts, [id]: value };
  }

  reset(): void {
    this.readings = this.#start;
    this.doubts = USUAL_DOUBT;
  }
}
