import { getContext, setContext } from 'svelte';
import type { PracticeRecord } from './practice-record.svelte';

const KEY = Symbol('practice record');

/** Holds the record of a visit, once something asks for it: pages that are only read do not fetch what makes one. */
interface RecordPlace {
  record?: PracticeRecord;
}

export const provideRecordPlace = (): RecordPlace => setContext<RecordPlace>(KEY, {});

export function recordPlace(): RecordPlace {
  const found = getContext<RecordPlace | undefined>(KEY);
  if (!found) throw new Error('no place for a practice record around this component');
  return found;
}
