import { isRecord } from '#core/document/read-members.ts';
import type { Outcome } from '#core/fault.ts';
import { readSheet } from '#exercises/sheet/read-sheet.ts';
import {
  SHEET_FORMAT,
  SHEET_VERSION,
  type AnswersShown,
  type Sheet,
} from '#exercises/sheet/sheet.ts';
import { freshSeed } from '$lib/exercise/fresh-seed';
import { Persisted } from '$lib/state/persisted.svelte';

/** One exercise of a draft, its numbers as they stand in their fields. */
export interface DraftItem {
  /** Tells exercises of a kind apart while they are moved about. */
  readonly key: string;
  readonly kind: string;
  readonly version: number;
  readonly marks: string;
  readonly attempts: string;
  readonly hints: boolean;
  readonly hintCost: string;
  readonly wide: boolean;
}

export interface DraftRecord {
  readonly title: string;
  readonly note: string;
  readonly seed: string;
  readonly answers: AnswersShown;
  readonly items: readonly DraftItem[];
}

const EMPTY: DraftRecord = { title: '', note: '', seed: '', answers: 'each-attempt', items: [] };

/** The sheet that is being put together, kept in this browser with every letter. */
export class Draft {
  readonly #kept = new Persisted<DraftRecord>('sheet-draft', EMPTY, isDraft);

  get record(): DraftRecord {
    return this.#kept.value;
  }

  /** The sheet, or what is still wrong with it. */
  readonly outcome: Outcome<Sheet> = $derived.by(() => readSheet(asDocument(this.record)));

  change(change: Partial<DraftRecord>): void {
    const { seed } = this.record;
    this.#kept.value = { ...this.record, seed: seed === '' ? freshSeed() : seed, ...change };
  }

  changeItem(index: number, change: Partial<DraftItem>): void {
    this.change({
      items: this.record.items.map((item, i) => (i === index ? { ...item, ...change } : item)),
    });
  }

  add(kind: string, version: number, parts: number): void {
    const item: DraftItem = {
      key: freshSeed(),
      kind,
      version,
      marks: String(parts),
      attempts: '2',
      hints: false,
      hintCost: '50',
      wide: false,
    };
    this.change({ items: [...this.record.items, item] });
  }

  remove(index: number): void {
    this.change({ items: this.record.items.filter((_, i) => i !== index) });
  }

  /** Moves an exercise up (−1) or down (1). */
  move(index: number, by: -1 | 1): void {
    const items = [...this.record.items];
    const [item] = items.splice(index, 1);
    if (item) items.splice(index + by, 0, item);
    this.change({ items });
  }

  /** Whether there is nothing in it yet. */
  get blank(): boolean {
    const { title, note, items } = this.record;
    return title === '' && note === '' && items.length === 0;
  }

  /** Goes on with a published sheet. */
  take({ title, note, seed, answers, items }: Sheet): void {
    this.change({
      title,
      note,
      seed,
      answers,
      items: items.map((item) => ({
        key: freshSeed(),
        kind: item.kind,
        version: item.version,
        marks: String(item.marks),
        attempts: String(item.attempts),
        hints: item.hintCost_percent !== undefined,
        hintCost: String(item.hintCost_percent ?? 50),
        wide: item.tolerance === 'wide',
      })),
    });
  }

  clear(): void {
    this.#kept.value = { ...EMPTY, seed: freshSeed() };
  }
}

const asDocument = ({ items, seed, ...head }: DraftRecord): unknown => ({
  format: SHEET_FORMAT,
  version: SHEET_VERSION,
  ...head,
  seed: seed === '' ? 'draft' : seed,
  items: items.map(({ kind, version, marks, attempts, hints, hintCost, wide }) => ({
    kind,
    version,
    marks: numberIn(marks),
    // Whoever is told nothing has one attempt, whatever stands in the field.
    attempts: head.answers === 'each-attempt' ? numberIn(attempts) : 1,
    ...(hints && { hintCost_percent: numberIn(hintCost) }),
    tolerance: wide ? 'wide' : 'usual',
  })),
});

/** The number in a field, or the text itself for the reader to find fault with. */
function numberIn(text: string): unknown {
  const number = Number(text.trim().replace(',', '.'));
  return text.trim() === '' || Number.isNaN(number) ? text.trim() : number;
}

const isDraft = (value: unknown): value is DraftRecord =>
  isRecord(value) &&
  ['title', 'note', 'seed', 'answers'].every((key) => typeof value[key] === 'string') &&
  Array.isArray(value['items']) &&
  value['items'].every(
    (item: unknown) =>
      isRecord(item) &&
      ['key', 'kind', 'marks', 'attempts', 'hintCost'].every(
        (key) => typeof item[key] === 'string',
      ) &&
      typeof item['version'] === 'number',
  );
