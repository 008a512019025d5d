import type { DBSchema, IDBPDatabase } from 'idb';
import { isBenchRecord, type BenchRecord } from './bench-record';

const DATABASE = 'knucklebook-bench';
const STORE = 'cars';

interface Schema extends DBSchema {
  readonly cars: { key: string; value: unknown };
}

/** Where the cars of this browser are kept. */
export interface Shelf {
  readonly records: () => Promise<readonly BenchRecord[]>;
  /**
   * Puts a record in the place of the one that was last seen there. Where another one has come there since, it is left, and
   * given back.
   *
   * @param seen when the record was written that is known to be there; left out, nothing has been there
   */
  readonly put: (record: BenchRecord, seen: number | undefined) => Promise<BenchRecord | undefined>;
  readonly remove: (id: string) => Promise<void>;
}

/**
 * Opens the shelf in IndexedDB; its library is fetched when somebody comes to the bench.
 *
 * @throws where the browser forbids storage
 */
export async function openShelf(): Promise<Shelf> {
  const { openDB } = await import('idb');
  const database: IDBPDatabase<Schema> = await openDB<Schema>(DATABASE, 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore(STORE);
    },
  });
  return {
    // What is no record of ours stays where it is, and is not shown.
    records: async () => (await database.getAll(STORE)).filter(isBenchRecord),
    put: async (record, seen) => {
      const write = database.transaction(STORE, 'readwrite');
      const there = await write.store.get(record.id);
      const foreign = isBenchRecord(there) && there.at !== seen ? there : undefined;
      if (foreign === undefined) await write.store.put(record, record.id);
      await write.done;
      return foreign;
    },
    remove: (id) => database.delete(STORE, id),
  };
}
