import { isRecord } from '#core/document/read-members.ts';
import type { ExerciseKind } from '#exercises/registry.ts';
import { collect, type Collection } from '#exercises/sheet/collect.ts';
import { fingerprintOf } from '#exercises/sheet/fingerprint.ts';
import { piecesOf } from '#exercises/sheet/pieces.ts';
import type { Sheet } from '#exercises/sheet/sheet.ts';
import { remember, remembered } from '$lib/state/storage';

/** A file or a pasted text, as it came. */
interface Handed {
  readonly name: string;
  readonly text: string;
}

/** What has been handed in for a sheet, kept in this browser until it is thrown away. */
export class Collecting {
  readonly sheet: Sheet;
  readonly kinds: readonly ExerciseKind[];
  #handed = $state.raw<readonly Handed[]>([]);
  /** Whether the browser keeps it. */
  kept = $state(true);
  readonly collection: Collection = $derived.by(() =>
    collect(
      this.sheet,
      this.kinds,
      this.#handed.flatMap(({ name, text }) => piecesOf(name, text)),
    ),
  );

  constructor(sheet: Sheet, kinds: readonly ExerciseKind[]) {
    this.sheet = sheet;
    this.kinds = kinds;
    const stored = remembered(this.#key);
    if (Array.isArray(stored)) this.#handed = stored.filter(isHanded);
  }

  get count(): number {
    return this.#handed.length;
  }

  /** Takes in files or texts. A name that is there already gets a number. */
  add(more: readonly Handed[]): void {
    const all = [...this.#handed];
    for (const { name, text } of more) {
      let own = name;
      for (let i = 2; all.some((one) => one.name === own); i++) own = `${name} (${i})`;
      all.push({ name: own, text });
    }
    this.#set(all);
  }

  /** Takes one piece out, by its name; of several in one text, only that one. */
  remove(name: string): void {
    this.#set(
      this.#handed.flatMap((handed) => {
        if (handed.name === name) return [];
        const pieces = piecesOf(handed.name, handed.text);
        if (!pieces.some((piece) => piece.name === name)) return [handed];
        // What was read comes back as documents of its own; what could not be read has no name to be kept by.
        return pieces.flatMap((piece) =>
          piece.name !== name && piece.result.ok
            ? [{ name: piece.name, text: JSON.stringify(piece.result.value) }]
            : [],
        );
      }),
    );
  }

  clear(): void {
    this.#set([]);
  }

  get #key(): string {
    return `sheet-collected:${fingerprintOf(this.sheet)}`;
  }

  #set(handed: readonly Handed[]): void {
    this.#handed = handed;
    this.kept = remember(this.#key, handed.length > 0 ? handed : undefined);
  }
}

const isHanded = (value: unknown): value is Handed =>
  isRecord(value) && typeof value['name'] === 'string' && typeof value['text'] === 'string';
