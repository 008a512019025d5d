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
  readonly put: (record: BenchRecord) => Promise<void>;
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
    put: async (record) => {
      await database.put(STORE, record, record.id);
    },
    remove: (id) => database.delete(STORE, id),
  };
}
