import { isRecord } from '#core/document/read-members.ts';
import { namedAfter } from './read-text';

/** A car as it is kept in this browser: its document as it was written, and what stands in fields unread. */
export interface BenchRecord {
  readonly id: string;
  /** When it was last changed, in milliseconds since 1970. */
  readonly at: number;
  /** A bench document of this version or an older one; read strictly whenever it is opened. */
  readonly document: unknown;
  /** Texts in fields that could not be read as numbers yet, by the field’s place in the document. */
  readonly typed: Readonly<Record<string, string>>;
}

export const isBenchRecord = (value: unknown): value is BenchRecord =>
  isRecord(value) &&
  typeof value['id'] === 'string' &&
  typeof value['at'] === 'number' &&
  'document' in value &&
  isRecord(value['typed']) &&
  Object.values(value['typed']).every((text) => typeof text === 'string');

type Said = Pick<BenchRecord, 'document' | 'typed'>;

/** Whether two records say the same of a car, whenever that was written and in whichever order. */
export const saysTheSame = (a: Said, b: Said): boolean => inOrder(a) === inOrder(b);

const inOrder = ({ document, typed }: Said): string =>
  JSON.stringify([document, typed], (_, value: unknown) =>
    isRecord(value)
      ? Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );

/** What a record holds as a car of its own, with something after its name. */
export function asAnother(record: BenchRecord, id: string, more: string): BenchRecord {
  const { document } = record;
  if (!isRecord(document) || !isRecord(document['car'])) return { ...record, id };
  const car = { ...document['car'], name: namedAfter(recordName(record), more) };
  return { ...record, id, document: { ...document, car } };
}

/** What a car is called, whether or not its document can be read. */
export function recordName({ document }: BenchRecord): string {
  const car = isRecord(document) ? document['car'] : undefined;
  const name = isRecord(car) ? car['name'] : undefined;
  return typeof name === 'string' && name.trim() !== '' ? name : 'Car without a name';
}
