import { readBenchParts } from '#core/judgement/read-bench.ts';
import type { BenchDocument } from '#core/judgement/bench-document.ts';
import { faultLine } from '#core/fault.ts';
import { freshSeed } from '$lib/exercise/fresh-seed';
import { getContext, setContext } from 'svelte';
import { Bench } from './bench.svelte';
import { asAnother, saysTheSame, type BenchRecord } from './bench-record';
import { FROM_THIS_TAB, KeptCars } from './kept-cars.svelte';
import type { Told } from './other-tabs';
import { namedAfter } from './read-text';

const KEY = Symbol('garage');

/**
 * The cars of this browser and the one that is on the bench. Every change is kept at once; where the browser forbids that, the
 * page says so and everything lasts as long as the page.
 */
export class Garage {
  readonly #cars = new KeptCars(
    (told) => this.#hear(told),
    (record) => this.#refused(record),
  );
  bench = $state.raw<Bench>();
  /** The car that was removed last, as long as it can be brought back. */
  removed = $state.raw<BenchRecord>();
  /** What is kept but cannot be read, with why. It stays as it is. */
  broken = $state.raw<{ readonly record: BenchRecord; readonly lines: readonly string[] }>();
  /** What another tab has made of the car on the bench; `removed` where it has taken it away. */
  elsewhere = $state.raw<BenchRecord | 'removed'>();
  /** What is entered here meanwhile is kept as this car. */
  #beside = $state<string>();

  /** All cars, the one last changed first. */
  get records(): readonly BenchRecord[] {
    return this.#cars.records;
  }

  get keeping(): KeptCars['keeping'] {
    return this.#cars.keeping;
  }

  /** The car that what is entered here is kept as, while another tab has the one on the bench changed. */
  get beside(): BenchRecord | undefined {
    return this.records.find(({ id }) => id === this.#beside);
  }

  /** Asks the browser for what it keeps, and goes on with the car that was open last. */
  async begin(): Promise<void> {
    const open = await this.#cars.begin();
    if (open !== undefined && this.bench === undefined) this.open(open.id);
  }

  /** Looks again at what other tabs have done, after a page has slept. */
  lookAgain(): void {
    void this.#cars.lookAgain();
  }

  end(): void {
    this.#cars.end();
  }

  /** Puts a kept car on the bench. */
  open(id: string): void {
    const record = this.records.find((one) => one.id === id);
    if (record === undefined) return;
    const document = this.#read(record);
    if (document !== undefined) this.#putOn(record.id, document, record.typed);
  }

  /** A new car, kept and put on the bench. */
  add(document: BenchDocument): void {
    this.broken = undefined;
    this.#putOn(freshSeed(), document, {});
  }

  /** A second one of the car on the bench, to go another way with. */
  copy(record: BenchRecord): void {
    const read = readBenchParts(record.document);
    if (!read.ok) return;
    const { car } = read.value;
    this.add({ ...read.value, car: { ...car, name: namedAfter(car.name, ', copy') } });
  }

  remove(record: BenchRecord): void {
    this.removed = record;
    this.#cars.remove(record);
    if (this.bench?.id === record.id) this.leave();
    if (this.broken?.record.id === record.id) this.broken = undefined;
  }

  /** Brings back what was removed last. */
  restore(): void {
    const record = this.removed;
    if (record === undefined) return;
    this.removed = undefined;
    this.#cars.put(record);
    this.open(record.id);
  }

  /** Takes the car off the bench; it stays kept. */
  leave(): void {
    this.bench = undefined;
    this.#agree();
    this.#cars.leave();
  }

  /**
   * Takes what the other tab has made of this car, as a step that undo takes back. What stands unread in a field no step
   * holds: then this tab’s way is left as a car of its own besides.
   */
  takeOther(): void {
    const { bench, elsewhere } = this;
    if (bench === undefined || elsewhere === undefined) return;
    if (elsewhere === 'removed') {
      this.leave();
      return;
    }
    const document = this.#read(elsewhere);
    if (document === undefined) return;
    if (this.#beside === undefined && Object.keys(bench.typed).length > 0) this.#keepBeside(bench);
    this.#agree();
    this.#cars.see(elsewhere);
    bench.takeOver({ document, typed: elsewhere.typed });
  }

  /** Keeps this car as it stands here; what the other tab has made of it becomes a car of its own. */
  keepMine(): void {
    const { bench, elsewhere, beside } = this;
    if (bench === undefined || elsewhere === undefined) return;
    this.#agree();
    if (elsewhere !== 'removed') {
      this.#cars.see(elsewhere);
      this.#cars.put(asAnother(elsewhere, freshSeed(), ', as in the other tab'));
    }
    this.#keep(bench);
    // What has been kept beside the car is the car itself now.
    if (beside) this.#cars.remove(beside);
  }

  #read(record: BenchRecord): BenchDocument | undefined {
    const read = readBenchParts(record.document);
    this.broken = read.ok ? undefined : { record, lines: read.faults.map(faultLine) };
    return read.ok ? read.value : undefined;
  }

  #putOn(id: string, document: BenchDocument, typed: BenchRecord['typed']): void {
    this.#agree();
    const bench: Bench = new Bench(id, document, typed, () => {
      this.#keep(bench);
    });
    this.bench = bench;
    this.#keep(bench);
  }

  #keep(bench: Bench): void {
    if (this.elsewhere === 'removed') this.elsewhere = undefined;
    if (this.elsewhere === undefined) this.#cars.write(recordOf(bench));
    else this.#keepBeside(bench);
  }

  #keepBeside(bench: Bench): void {
    this.#beside ??= freshSeed();
    this.#cars.write(asAnother(recordOf(bench), this.#beside, FROM_THIS_TAB));
  }

  #agree(): void {
    this.elsewhere = undefined;
    this.#beside = undefined;
  }

  /** Another tab has changed a car, or taken it away; says whether this tab has the same, or need not care. */
  #hear(told: Told): boolean {
    const { bench } = this;
    if (told.kind === 'removed') {
      if (told.id === bench?.id) this.elsewhere = 'removed';
      return true;
    }
    if (told.record.id !== bench?.id) return true;
    const same = saysTheSame(bench, told.record);
    this.elsewhere = same ? undefined : told.record;
    return same;
  }

  /** What this tab wanted to keep stands beside what another tab had kept before. */
  #refused({ id }: BenchRecord): boolean {
    const { bench } = this;
    if (bench?.id !== id) return false;
    if (this.elsewhere !== undefined) this.#keepBeside(bench);
    return true;
  }
}

const recordOf = ({ id, document, typed }: Bench): BenchRecord => ({
  id,
  at: Date.now(),
  document,
  typed,
});

export const provideGarage = (garage: Garage): Garage => setContext(KEY, garage);

export function garage(): Garage {
  const found = getContext<Garage | undefined>(KEY);
  if (!found) throw new Error('no garage around this component');
  return found;
}
