import { stationAt, WAY_END } from '#scenes/bearing/force-way.ts';

/** How long the force takes from one station to the next. */
const LEG_MS = 1100;

/** A force on its way through the bearing: moved by the reader, or by itself until it has arrived. */
export class ForceTravel {
  way = $state(0);
  #frame = $state<number>();
  readonly travels = $derived(this.#frame !== undefined);
  readonly station = $derived(stationAt(this.way));
  readonly arrived = $derived(this.way >= WAY_END);

  go(way: number): void {
    this.stop();
    this.way = Math.min(WAY_END, Math.max(0, way));
  }

  /** To the next station, from the last back to the first; at once where motion is not wanted. */
  next(): void {
    this.go(this.arrived ? 0 : Math.floor(this.way + 1e-6) + 1);
  }

  /** Goes on by itself from where it is, from the road once it has arrived. */
  travel(): void {
    this.stop();
    const begin = this.arrived ? 0 : this.way;
    let start: number | undefined;
    const step = (time: number): void => {
      start ??= time;
      this.way = Math.min(WAY_END, begin + (time - start) / LEG_MS);
      this.#frame = this.way < WAY_END ? requestAnimationFrame(step) : undefined;
    };
    this.#frame = requestAnimationFrame(step);
  }

  stop(): void {
    if (this.#frame !== undefined) cancelAnimationFrame(this.#frame);
    this.#frame = undefined;
  }
}
