import { freshSeed } from '$lib/exercise/fresh-seed';
import { remember, remembered } from '$lib/state/storage';
import { asAnother, isBenchRecord, type BenchRecord } from './bench-record';
import { otherTabs, type OtherTabs, type Told } from './other-tabs';
import { openShelf, type Shelf } from './shelf';

/** The car that is open stands in here besides, written at once: a closed tab waits for no database. */
const OPEN = 'bench-open';

/** The car that was on the bench last, wherever in this browser that was. */
export function openRecord(): BenchRecord | undefined {
  const open = remembered(OPEN);
  return isBenchRecord(open) ? open : undefined;
}

/** What follows a car’s name where this tab’s way with it is kept beside another tab’s. */
export const FROM_THIS_TAB = ', from this tab';

/**
 * The cars of this browser on their shelf, which other tabs write to as well. Nothing that another tab has written is
 * written over before somebody has seen it: what is refused is kept as a car of its own.
 */
export class KeptCars {
  #records = $state.raw<readonly BenchRecord[]>([]);
  /** Whether the browser has answered, and whether cars outlive the page. */
  keeping = $state<'asked' | 'kept' | 'forbidden'>('asked');
  #shelf: Shelf | undefined;
  #others: OtherTabs | undefined;
  /** When each car on the shelf was written, as far as this tab has seen and taken note. */
  readonly #seen: Record<string, number | undefined> = {};
  readonly #onforeign: (told: Told) => boolean;
  readonly #onrefused: (record: BenchRecord) => boolean;

  /**
   * @param onforeign is told what another tab has done to a car; says whether it may be taken for seen
   * @param onrefused is told what could not be written since another tab’s stands there; says whether that is taken care of
   */
  constructor(onforeign: (told: Told) => boolean, onrefused: (record: BenchRecord) => boolean) {
    this.#onforeign = onforeign;
    this.#onrefused = onrefused;
  }

  /** All cars, the one last changed first. */
  get records(): readonly BenchRecord[] {
    return this.#records;
  }

  /** Asks the browser for what it keeps; says which car was open last. */
  async begin(): Promise<BenchRecord | undefined> {
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
    for (const { id, at } of stored) this.#seen[id] = at;
    this.#others = otherTabs((told) => {
      this.#hear(told);
    });
    const begun = this.#records;
    this.#records = begun.reduce(withRecord, stored);
    for (const record of begun) this.#shelve(record);
    if (open === undefined) return undefined;
    const shelved = stored.find(({ id }) => id === open.id);
    if (shelved === undefined || shelved.at < open.at) {
      this.#records = withRecord(this.#records, open);
      this.#shelve(open);
    }
    return open;
  }

  /** Keeps a car, which is the open one then. */
  write(record: BenchRecord): void {
    const written = remember(OPEN, record);
    if (!written && this.#shelf === undefined && this.keeping === 'kept') this.#lost();
    this.put(record);
  }

  /** Keeps a car, whichever is open. */
  put(record: BenchRecord): void {
    this.#records = withRecord(this.#records, record);
    this.#shelve(record);
  }

  remove({ id }: BenchRecord): void {
    this.#records = this.#records.filter((one) => one.id !== id);
    this.#seen[id] = undefined;
    void this.#shelf?.remove(id).catch(this.#lost);
    this.#others?.tell({ kind: 'removed', id });
  }

  /** No car is open any more. */
  leave(): void {
    remember(OPEN, undefined);
  }

  /** What another tab has written has been seen, and may be written over. */
  see({ id, at }: BenchRecord): void {
    this.#seen[id] = at;
  }

  /** Looks again at what is kept: a page that has slept may not have been told. */
  async lookAgain(): Promise<void> {
    const stored = await this.#shelf?.records().catch(() => undefined);
    for (const record of stored ?? []) {
      if (record.at > (this.#seen[record.id] ?? 0)) this.#hear({ kind: 'kept', record });
    }
  }

  /** Stops listening to other tabs. */
  end(): void {
    this.#others?.close();
  }

  #hear(told: Told): void {
    if (told.kind === 'removed') {
      this.#seen[told.id] = undefined;
      this.#records = this.#records.filter(({ id }) => id !== told.id);
      this.#onforeign(told);
      return;
    }
    this.#records = withRecord(this.#records, told.record);
    if (this.#onforeign(told)) this.see(told.record);
  }

  #shelve(record: BenchRecord): void {
    const seen = this.#seen[record.id];
    this.see(record);
    const put = this.#shelf?.put(record, seen) ?? Promise.resolve(undefined);
    void put.then((foreign) => {
      if (foreign === undefined) this.#others?.tell({ kind: 'kept', record });
      else this.#refused(record, foreign);
    }, this.#lost);
  }

  #refused(record: BenchRecord, foreign: BenchRecord): void {
    this.#hear({ kind: 'kept', record: foreign });
    if (!this.#onrefused(record)) this.put(asAnother(record, freshSeed(), FROM_THIS_TAB));
  }

  readonly #lost = (): void => {
    this.keeping = 'forbidden';
  };
}

const withRecord = (
  records: readonly BenchRecord[],
  record: BenchRecord,
): readonly BenchRecord[] => [record, ...records.filter(({ id }) => id !== record.id)];
