import { isRecord } from '../document/read-members.ts';
import { failure, success, type Outcome } from '../fault.ts';
import { BENCH_VERSION } from './bench-document.ts';

type Document = Readonly<Record<string, unknown>>;

/** Brings a document of one version to the next; it may be anything that says so, so it must not rely on its keys. */
export type Step = (document: Document) => Document;

/** From version 1 to 2, from 2 to 3 and so on. A step that has been published is never changed. */
const STEPS: readonly Step[] = [
  // What left and right differ by may be known since: nothing of an older document is moved, and it has none.
  (document) => document,
];

/**
 * A bench document of any version, brought up to the newest one. What is no document goes through as it is, for the
 * reader to say so.
 *
 * @returns a fault for a version that there is not, or not yet: a newer copy of the course has written it
 */
export function migrated(value: unknown, steps: readonly Step[] = STEPS): Outcome<unknown> {
  const newest = steps.length + 1;
  if (!isRecord(value)) return success(value);
  const { version } = value;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return failure({
      path: 'version',
      wrong: version === undefined ? 'is missing' : `is ${JSON.stringify(version)}`,
      allowed: `a whole number from 1 to ${newest}`,
    });
  if (version > newest)
    return failure({
      path: 'version',
      wrong: `is ${version}, which a newer copy of the course has written`,
      allowed: `up to ${newest} here; reload the page for a newer copy`,
    });
  return success(
    steps
      .slice(version - 1)
      .reduce<Document>(
        (document, step, i) => ({ ...step(document), version: version + i + 1 }),
        value,
      ),
  );
}

if (BENCH_VERSION !== STEPS.length + 1) throw new RangeError('a version without its step');
