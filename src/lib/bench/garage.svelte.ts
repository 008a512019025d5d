import { readBenchParts } from '#core/judgement/read-bench.ts';
import type { BenchDocument } from '#core/judgement/bench-document.ts';
import { faultLine } from '#core/fault.ts';
import { freshSeed } from '$lib/exercise/fresh-seed';
import { remember, remembered } from '$lib/state/storage';
import { getContext, setContext } from 'svelte';
import { Bench } from './bench.svelte';
import { isBenchRecord, type BenchRecord } from './bench-record';
import { openShelf, type Shelf } from './shelf';

const KEY = Symbol('garage');

/** The car that is open stands in here besides, written at once: a closed tab waits for no database. */
const OPEN = 'bench-open';

/** The car that was on the bench last, wherever in this browser that was. */
export function openRecord(): BenchRecord | undefined {
  const open = remembered(OPEN);
  return isBenchRecord(open) ? open : undefined;
}

/**
 * The cars of this browser and the one that is on the bench. Every change is kept at once; where the browser forbids that, the
 * page says so and everything lasts as long as the page.
 */
export class Garage {
  #records = $state.raw<readonly BenchRecord[]>([]);
  bench = $state.raw<Bench>();
  /** Whether the browser has answered, and whether cars outlive the page. */
  keeping = $state<'asked' | 'kept' | 'forbidden'>('asked');
  /** The car that was removed last, as long as it can be brought back. */
  removed = $state.raw<BenchRecord>();
  /** What is kept but cannot be read, with why. It stays as it is. */
  broken = $state.raw<{ readonly record: BenchRecord; readonly lines: readonly string[] }>();
  #shelf: Shelf | undefined;

  /** All cars, the one last changed first. */
  get records(): readonly BenchRecord[] {
    return this.#records;
  }

  /** Asks the browser for what it keeps, and goes on with the car that was open last. */
  async begin(): Promise<void> {
    const open = openRecord();
    let stored: readonly BenchRecord[] = [];
    try {
      this.#shelf = await openShelf();
      stored = await this.#shelf.records();
      this.keeping = 'kept';
    } catch {
      this.#shelf = undefined;
      this.keeping = remember('bench-try', true) ? 'kept' : 'forbidden';
    }
    remember('bench-try', undefined);
    const begun = this.#records;
    this.#records = begun.reduce(withRecord, stored);
    for (const record of begun) this.#shelve(record);
    if (open === undefined) return;
    const shelved = stored.find(({ id }) => id === open.id);
    if (shelved === undefined || shelved.at < open.at) {
      this.#records = withRecord(this.#records, open);
      this.#shelve(open);
    }
    if (this.bench === undefined) this.open(open.id);
  }

  /** Puts a kept car on the bench. */
  open(id: string): void {
    const record = this.#records.find((one) => one.id === id);
    if (record === undefined) return;
    const read = readBenchParts(record.document);
    if (!read.ok) {
      this.broken = { record, lines: read.faults.map(faultLine) };
      return;
    }
    this.broken = undefined;
    this.bench = this.#benchOf(record.id, read.value, record.typed);
    this.#keep(this.bench);
  }

  /** A new car, kept and put on the bench. */
  add(document: BenchDocument): void {
    this.broken = undefined;
    this.bench = this.#benchOf(freshSeed(), document, {});
    this.#keep(this.bench);
  }

  /** A second one of the car on the bench, to go another way with. */
  copy(record: BenchRecord): void {
    const read = readBenchParts(record.document);
    if (!read.ok) return;
    const { car } = read.value;
    this.add({ ...read.value, car: { ...car, name: `${car.name}, copy` } });
  }

  remove(record: BenchRecord): void {
    this.#records = this.#records.filter(({ id }) => id !== record.id);
    this.removed = record;
    void this.#shelf?.remove(record.id).catch(this.#lost);
    if (this.bench?.id === record.id) this.leave();
    if (this.broken?.record.id === record.id) this.broken = undefined;
  }

  /** Brings back what was removed last. */
  restore(): void {
    const record = this.removed;
    if (record === undefined) return;
    this.removed = undefined;
    this.#records = withRecord(this.#records, record);
    this.#shelve(record);
    this.open(record.id);
  }

  /** Takes the car off the bench; it stays kept. */
  leave(): void {
    this.bench = undefined;
    remember(OPEN, undefined);
  }

  #benchOf(id: string, document: BenchDocument, typed: BenchRecord['typed']): Bench {
    const bench: Bench = new Bench(id, document, typed, () => {
      this.#keep(bench);
    });
    return bench;
  }

  #keep({ id, document, typed }: Bench): void {
    const record: BenchRecord = { id, at: Date.now(), document, typed };
    this.#records = withRecord(this.#records, record);
    const written = remember(OPEN, record);
    if (!written && this.#shelf === undefined && this.keeping === 'kept') this.#lost();
    this.#shelve(record);
  }

  #shelve(record: BenchRecord): void {
    void this.#shelf?.put(record).catch(this.#lost);
  }

  readonly #lost = (): void => {
    this.keeping = 'forbidden';
  };
}

const withRecord = (
  records: readonly BenchRecord[],
  record: BenchRecord,
): readonly BenchRecord[] => [record, ...records.filter(({ id }) => id !== record.id)];

export const provideGarage = (garage: Garage): Garage => setContext(KEY, garage);

export function garage(): Garage {
  const found = getContext<Garage | undefined>(KEY);
  if (!found) throw new Error('no garage around this component');
  return found;
}
