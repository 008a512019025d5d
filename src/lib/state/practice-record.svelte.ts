import { inOrder, notYetKnown, type Attempt } from '#exercises/record/attempt.ts';
import type { Draft } from '$lib/exercise/draft';
import { onMount } from 'svelte';
import type { PracticeStore } from './practice-store';
import { recordPlace } from './record-place';

/** How other tabs hear that the record has changed. */
const CHANNEL = 'knucklebook:record';

/** How the record is kept. */
export type Keeping =
  /** The browser has not answered yet. */
  | 'unknown'
  | 'kept'
  /** The browser forbids it, or has no room: the record lasts as long as the page. */
  | 'forbidden'
  /** Another tab has an older copy of the course open and has to be closed first. */
  | 'waiting'
  /** Another tab has a newer copy of the course open: this page has to be loaded again. */
  | 'overtaken';

/**
 * What has been practised in this browser. Kept in IndexedDB, sent nowhere; where the browser forbids storage it
 * lasts as long as the page. Opened by whatever first asks for it (see `practiceRecord`): pages that are only read
 * do not fetch what it takes.
 */
export class PracticeRecord {
  #attempts = $state.raw<readonly Attempt[]>([]);
  #keeping = $state<Keeping>('unknown');
  /** Attempts that are not in the database yet. */
  #pending: readonly Attempt[] = [];
  /** Drafts of this page, for the case that nothing else keeps them. */
  #drafts: Readonly<Record<string, Draft>> = {};
  #seeds: Readonly<Record<string, string>> = {};
  #store: Promise<PracticeStore | undefined> | undefined;
  #channel: BroadcastChannel | undefined;

  get attempts(): readonly Attempt[] {
    return this.#attempts;
  }

  get keeping(): Keeping {
    return this.#keeping;
  }

  /** Whether what is kept has been read, or never will be. */
  get ready(): boolean {
    return this.#keeping === 'kept' || this.#keeping === 'forbidden';
  }

  /** Attempts at one kind, oldest first. */
  of(kind: string): readonly Attempt[] {
    return this.#attempts.filter((attempt) => attempt.kind === kind);
  }

  /** Opens the database, once. Until it answers, what is added waits. */
  open(): void {
    this.#store ??= this.#opened();
  }

  add(attempt: Attempt): void {
    void this.merge([attempt]);
  }

  /** Adds what is not there yet; says how many that were. */
  async merge(attempts: readonly Attempt[]): Promise<number> {
    const fresh = notYetKnown(attempts, this.#attempts);
    this.#pending = [...this.#pending, ...fresh];
    this.#attempts = inOrder([...this.#attempts, ...fresh]);
    const stored = await this.#try((store) => store.add(fresh));
    if (stored) {
      this.#pending = this.#pending.filter((one) => !fresh.includes(one));
      this.#tell();
    }
    return fresh.length;
  }

  /** Forgets attempts and drafts, here and in the database; says whether that could be done. */
  async erase(): Promise<boolean> {
    this.#attempts = [];
    this.#pending = [];
    this.#drafts = {};
    this.#seeds = {};
    const erased = await this.#try((store) => store.erase());
    if (erased) this.#tell();
    return erased || this.#keeping === 'forbidden';
  }

  /** What was typed in an exercise that was left. */
  async draft(name: string): Promise<Draft | undefined> {
    return this.#drafts[name] ?? (await this.#get((store) => store.draft(name)));
  }

  keepDraft(name: string, draft: Draft): void {
    this.#drafts = { ...this.#drafts, [name]: draft };
    void this.#try((store) => store.putDraft(name, draft));
  }

  /** The seed of the exercise that was last open at a place. */
  async seedAt(place: string): Promise<string | undefined> {
    return this.#seeds[place] ?? (await this.#get((store) => store.seedAt(place)));
  }

  keepSeedAt(place: string, seed: string): void {
    this.#seeds = { ...this.#seeds, [place]: seed };
    void this.#try((store) => store.putSeedAt(place, seed));
  }

  async #opened(): Promise<PracticeStore | undefined> {
    try {
      const { PracticeStore: Store } = await import('./practice-store');
      const store = await Store.open({
        onwaiting: () => (this.#keeping = 'waiting'),
        onovertaken: () => (this.#keeping = 'overtaken'),
      });
      await this.#read(store);
      this.#listen(store);
      this.#keeping = 'kept';
      return store;
    } catch {
      this.#keeping = 'forbidden';
      return undefined;
    }
  }

  async #read(store: PracticeStore): Promise<void> {
    const stored = await store.attempts();
    this.#attempts = inOrder([...stored, ...notYetKnown(this.#pending, stored)]);
  }

  #listen(store: PracticeStore): void {
    this.#channel = new BroadcastChannel(CHANNEL);
    this.#channel.onmessage = () => {
      void this.#read(store).catch(() => (this.#keeping = 'forbidden'));
    };
  }

  #tell(): void {
    this.#channel?.postMessage('changed');
  }

  /** Does something with the database; says whether it worked. */
  async #try(work: (store: PracticeStore) => Promise<void>): Promise<boolean> {
    const store = await this.#store;
    if (!store) return false;
    try {
      await work(store);
      return true;
    } catch {
      if (this.#keeping !== 'overtaken') this.#keeping = 'forbidden';
      return false;
    }
  }

  async #get<Value>(
    read: (store: PracticeStore) => Promise<Value | undefined>,
  ): Promise<Value | undefined> {
    let found: Value | undefined;
    await this.#try(async (store) => {
      found = await read(store);
    });
    return found;
  }
}

/** The record, made by whoever asks first, and opened once the asking component is on the page. */
export function practiceRecord(): PracticeRecord {
  const found = (recordPlace().record ??= new PracticeRecord());
  onMount(() => {
    found.open();
  });
  return found;
}
