import type { Attempt } from '#exercises/record/attempt.ts';
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Draft } from '$lib/exercise/draft';

/** What stands in the browser's database. Whoever changes it raises the version and brings what is there along. */
interface Schema extends DBSchema {
  attempts: { key: number; value: Attempt };
  /** What is typed in unfinished exercises, by their names. */
  drafts: { key: string; value: Draft };
  /** The seed at each place that exercises are done at. */
  places: { key: string; value: string };
}

const NAME = 'knucklebook';
const VERSION = 2;

/** Drafts and places are looked through when the database is opened, and so many of the latest drafts are kept. */
const MOST_DRAFTS = 200;

/** What the database has to tell while it is open. */
export interface StoreEvents {
  /** An older copy of the course, open elsewhere, is in the way of the new version. */
  readonly onwaiting: () => void;
  /** A newer copy of the course has taken over; nothing can be kept from here any more. */
  readonly onovertaken: () => void;
}

/** The record in the browser's database. This file is fetched when somebody practises, and only then. */
export class PracticeStore {
  readonly #database: IDBPDatabase<Schema>;

  private constructor(database: IDBPDatabase<Schema>) {
    this.#database = database;
  }

  static async open({ onwaiting, onovertaken }: StoreEvents): Promise<PracticeStore> {
    const database = await openDB<Schema>(NAME, VERSION, {
      upgrade(opened, from) {
        if (from < 1) opened.createObjectStore('attempts', { autoIncrement: true });
        if (from < 2) {
          opened.createObjectStore('drafts');
          opened.createObjectStore('places');
        }
      },
      blocked: onwaiting,
      blocking(_from, _to, event) {
        (event.target as IDBDatabase).close();
        onovertaken();
      },
      terminated: onovertaken,
    });
    const store = new PracticeStore(database);
    await store.#prune();
    return store;
  }

  attempts(): Promise<readonly Attempt[]> {
    return this.#database.getAll('attempts');
  }

  /** Adds all of them or, where one cannot be kept, none. */
  async add(attempts: readonly Attempt[]): Promise<void> {
    const write = this.#database.transaction('attempts', 'readwrite');
    await Promise.all([...attempts.map((one) => write.store.add(one)), write.done]);
  }

  draft(name: string): Promise<Draft | undefined> {
    return this.#database.get('drafts', name);
  }

  /** Commits at once, since the page may be gone a moment later. */
  async putDraft(name: string, draft: Draft): Promise<void> {
    const write = this.#database.transaction('drafts', 'readwrite');
    const put = write.store.put(draft, name);
    write.commit();
    await Promise.all([put, write.done]);
  }

  seedAt(place: string): Promise<string | undefined> {
    return this.#database.get('places', place);
  }

  async putSeedAt(place: string, seed: string): Promise<void> {
    await this.#database.put('places', seed, place);
  }

  async erase(): Promise<void> {
    const names = ['attempts', 'drafts', 'places'] as const;
    const write = this.#database.transaction(names, 'readwrite');
    await Promise.all([...names.map((name) => write.objectStore(name).clear()), write.done]);
  }

  /** Forgets the oldest drafts where there are very many. */
  async #prune(): Promise<void> {
    const write = this.#database.transaction('drafts', 'readwrite');
    const [names, drafts] = await Promise.all([write.store.getAllKeys(), write.store.getAll()]);
    const oldest = names
      .map((name, i) => ({ name, at: drafts[i]?.at ?? 0 }))
      .toSorted((a, b) => b.at - a.at)
      .slice(MOST_DRAFTS);
    await Promise.all([...oldest.map(({ name }) => write.store.delete(name)), write.done]);
  }
}
