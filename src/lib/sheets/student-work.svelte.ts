import { isRecord } from '#core/document/read-members.ts';
import { grade } from '#exercises/grade.ts';
import type { Entry } from '#exercises/own-road.ts';
import { readEntry, type Typed } from '#exercises/read-entry.ts';
import type { ExerciseKind } from '#exercises/registry.ts';
import { respond } from '#exercises/respond.ts';
import { fingerprintOf } from '#exercises/sheet/fingerprint.ts';
import { markResult, type MarkedResult } from '#exercises/sheet/mark-result.ts';
import { readResult } from '#exercises/sheet/read-result.ts';
import {
  RESULT_FORMAT,
  RESULT_LIMITS,
  RESULT_VERSION,
  sealed,
  type ItemWork,
  type SealedResult,
} from '#exercises/sheet/result.ts';
import type { Sheet, SheetItem } from '#exercises/sheet/sheet.ts';
import { variantOf } from '#exercises/sheet/variant.ts';
import type { Exercise } from '#exercises/exercise.ts';
import { Field } from '$lib/exercise/sitting.svelte';
import { remember, remembered } from '$lib/state/storage';

/** One exercise of a sheet as the student has left it. */
export class ItemSitting {
  readonly item: SheetItem;
  readonly exercise: Exercise;
  readonly fields: readonly Field[];
  hints = $state.raw<readonly number[]>([]);
  attempts = $state.raw<readonly (readonly Typed[])[]>([]);
  /** Whether the last attempt was all right. */
  solved = $state(false);
  /** Whether an attempt was to be made of nothing. */
  nothing = $state(false);
  readonly left = $derived.by(() => this.item.attempts - this.attempts.length);
  readonly closed = $derived(this.solved || this.left <= 0);

  constructor(item: SheetItem, exercise: Exercise) {
    this.item = item;
    this.exercise = exercise;
    this.fields = exercise.parts.map((part) => new Field(part, false));
  }

  get typed(): readonly Typed[] {
    return this.fields.map(({ text, word }) => ({
      text: text.trim().slice(0, RESULT_LIMITS.entryLetters),
      ...(word && { word }),
    }));
  }

  /** Reads the fields, and marks those that cannot be read; undefined where there are any. */
  read(): readonly Entry[] | undefined {
    const entries = this.fields.map((field): Entry => {
      const reading = readEntry({ text: field.text, word: field.word }, field.part.definition);
      field.problem = reading.kind === 'problem' ? reading : undefined;
      // What was said of an earlier entry is not true of this one.
      if (field.problem) field.response = undefined;
      return reading.kind === 'value' ? reading.value : undefined;
    });
    return this.fields.some(({ problem }) => problem) ? undefined : entries;
  }

  get empty(): number {
    return this.fields.filter(({ text }) => text.trim() === '').length;
  }

  /** Uses up an attempt, and says what came out. Fields that cannot be read, or are all empty, cost none. */
  check(): void {
    const entries = this.read();
    this.nothing = this.empty === this.fields.length;
    if (!entries || this.nothing) return;
    this.attempts = [...this.attempts, this.typed];
    this.reply(entries);
  }

  /**
   * Words for what stands in the fields.
   *
   * @param handedIn then answers may be told though attempts are left
   */
  reply(entries: readonly Entry[] | undefined, handedIn = false): void {
    if (!entries) return;
    const marks = grade(this.exercise, entries);
    this.solved = marks.earned === marks.possible;
    const answers = handedIn || this.closed;
    this.fields.forEach((field, i) => {
      // A hint that costs marks, or is not to be had, is not given away to a wrong answer.
      const hints = answers || this.item.hintCost_percent === 0 || this.hints.includes(i);
      field.response = respond(this.exercise, entries, i, { answers, hints });
    });
  }

  /** What is handed in: the attempts, and what was typed since the last one if there is an attempt left for it. */
  get work(): ItemWork {
    const last = JSON.stringify(this.attempts.at(-1));
    const more =
      !this.closed && this.empty < this.fields.length && JSON.stringify(this.typed) !== last;
    return {
      attempts: more ? [...this.attempts, this.typed] : this.attempts,
      hints: [...this.hints].sort((a, b) => a - b),
    };
  }
}

/** What the browser keeps of a student's work at a sheet. */
interface KeptWork {
  readonly items: readonly (ItemWork & { readonly typed: readonly Typed[] })[];
  readonly handedIn?: SealedResult;
}

/** A student's whole work at a sheet, kept in this browser as it goes. */
export class StudentWork {
  readonly sheet: Sheet;
  readonly number: number;
  readonly items: readonly ItemSitting[];
  handedIn = $state.raw<SealedResult>();
  /** Whether the browser keeps it. */
  kept = $state(true);
  readonly #variant: readonly Exercise[];
  readonly #fingerprint: string;

  constructor(sheet: Sheet, kinds: readonly ExerciseKind[], number: number) {
    this.sheet = sheet;
    this.number = number;
    this.#fingerprint = fingerprintOf(sheet);
    this.#variant = variantOf(sheet, kinds, number);
    this.items = this.#variant.flatMap((exercise, i) => {
      const item = sheet.items[i];
      return item ? [new ItemSitting(item, exercise)] : [];
    });
    this.#restore();
  }

  get #key(): string {
    return `sheet-work:${this.#fingerprint}:${this.number}`;
  }

  /** What there is to keep; read it where its changes are to be noticed. */
  get record(): KeptWork {
    return {
      items: this.items.map(({ attempts, hints, typed }) => ({ attempts, hints, typed })),
      ...(this.handedIn && { handedIn: this.handedIn }),
    };
  }

  keep(record: KeptWork): void {
    this.kept = remember(this.#key, record);
  }

  /**
   * Closes the work and makes the result of it.
   *
   * @param now by the device's clock, in milliseconds since 1970
   */
  handIn(now: number): void {
    this.handedIn = sealed({
      format: RESULT_FORMAT,
      version: RESULT_VERSION,
      sheet: this.#fingerprint,
      number: this.number,
      handedIn_min: Math.floor(now / 60_000),
      items: this.items.map(({ work }) => work),
    });
    this.keep(this.record);
    this.#answer();
  }

  get marked(): MarkedResult | undefined {
    return this.handedIn && markResult(this.sheet, this.#variant, this.handedIn);
  }

  /** Words for what was handed in. */
  #answer(): void {
    if (this.sheet.answers === 'never') return;
    for (const one of this.items) one.reply(one.read(), true);
  }

  #restore(): void {
    const record = remembered(this.#key);
    if (!isRecord(record) || !Array.isArray(record['items'])) return;
    // What storage holds is read as strictly as what is handed in.
    const read = readResult({
      ...this.#blank(),
      items: record['items'].map((one: unknown) => {
        if (!isRecord(one)) return one;
        return { attempts: [...listOf(one['attempts']), one['typed']], hints: one['hints'] };
      }),
    });
    if (!read.ok || read.value.items.length !== this.items.length) return;
    read.value.items.forEach(({ attempts, hints }, i) => {
      const one = this.items[i];
      if (!one) return;
      one.hints = hints;
      one.attempts = attempts.slice(0, -1);
      one.fields.forEach((field, f) => {
        const typed = attempts.at(-1)?.[f];
        field.text = typed?.text ?? '';
        field.word = typed?.word;
      });
      const lastTyped = JSON.stringify(one.attempts.at(-1)) === JSON.stringify(one.typed);
      if (lastTyped && this.sheet.answers === 'each-attempt') one.reply(one.read());
    });
    const handedIn = readResult(record['handedIn']);
    if (!handedIn.ok) return;
    this.handedIn = handedIn.value;
    this.#answer();
  }

  #blank() {
    return {
      format: RESULT_FORMAT,
      version: RESULT_VERSION,
      sheet: this.#fingerprint,
      number: this.number,
      check: 'none',
    };
  }
}

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
