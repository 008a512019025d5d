import {
  dueKinds,
  kindsAllTheSame,
  nextDue,
  type Choosing,
} from '#exercises/practice/choose-kinds.ts';
import { easierKind } from '#exercises/practice/easier-kind.ts';
import { kindsInMix } from '#exercises/practice/kinds-in-mix.ts';
import { unusedSeed } from '#exercises/practice/unused-seed.ts';
import type { Attempt } from '#exercises/record/attempt.ts';
import { freshSeed } from '$lib/exercise/fresh-seed';
import type { PractisedCourse, TitledKind } from '$lib/lesson/practice-kinds';
import type { CourseProgress } from '$lib/state/course-progress.svelte';
import { localDay, today } from '$lib/state/local-day';
import { Persisted } from '$lib/state/persisted.svelte';
import type { PracticeRecord } from '$lib/state/practice-record.svelte';
import type { PracticeSettings } from '$lib/state/practice-settings.svelte';

/** One exercise of a set: what is to be drawn. */
export interface SetItem {
  readonly kind: string;
  readonly seed: string;
}

interface KeptSet {
  readonly day: number;
  readonly items: readonly SetItem[];
  /** Index of the item that is shown; as many as there are items once the set is through. */
  readonly at: number;
}

/** What a set is made from. */
export interface SetSources {
  readonly course: PractisedCourse;
  readonly record: PracticeRecord;
  readonly progress: CourseProgress;
  readonly settings: PracticeSettings;
}

/** The set of mixed exercises that the learner is at, remembered in this browser. */
export class TodaysSet {
  readonly #kept = new Persisted<KeptSet | null>('set', null, isKeptSet);
  readonly #from: SetSources;

  constructor(from: SetSources) {
    this.#from = from;
  }

  /** The kinds that may be asked. */
  get mix(): readonly TitledKind[] {
    const { course, record, settings } = this.#from;
    return kindsInMix(course.kinds, record.attempts, this.#isRead, settings.all.lessons);
  }

  /** How many exercises a new set would have today. */
  get dueCount(): number {
    return dueKinds(this.#choosing, this.#from.settings.size).length;
  }

  /** The day on which something is due next; undefined where nothing has been tried. */
  get nextDay(): number | undefined {
    return nextDue(this.#choosing);
  }

  get items(): readonly SetItem[] {
    return this.#kept.value?.items ?? [];
  }

  get at(): number {
    return this.#kept.value?.at ?? 0;
  }

  get day(): number | undefined {
    return this.#kept.value?.day;
  }

  get item(): SetItem | undefined {
    return this.items[this.at];
  }

  /** Whether there is a set with something left in it. */
  get open(): boolean {
    return this.item !== undefined;
  }

  /** Whether there is a set that was done today. */
  get doneToday(): boolean {
    return this.items.length > 0 && !this.open && this.day === today();
  }

  /** The first attempt at an exercise of the set. */
  attemptAt({ kind, seed }: SetItem): Attempt | undefined {
    return this.#from.record.of(kind).find((attempt) => attempt.seed === seed);
  }

  kind(id: string): TitledKind | undefined {
    return this.#from.course.kinds.find((kind) => kind.id === id);
  }

  lessonTitle(slug: string): string {
    return this.#from.course.lessons.find((lesson) => lesson.slug === slug)?.title ?? slug;
  }

  /** Puts a new set together, of what is due or, if that is asked for, of anything in the mix. */
  begin(allTheSame = false): void {
    const choose = allTheSame ? kindsAllTheSame : dueKinds;
    const kinds = choose(this.#choosing, this.#from.settings.size);
    if (kinds.length === 0) return;
    let items: readonly SetItem[] = [];
    for (const { id } of kinds) items = [...items, this.#fresh(id, items)];
    this.#kept.value = { day: today(), items, at: 0 };
  }

  next(): void {
    this.#set(this.items, this.at + 1);
  }

  /** Puts the exercise that is shown behind the others. */
  later(): void {
    const { item, at } = this;
    if (item) this.#set([...this.items.toSpliced(at, 1), item], at);
  }

  /** An easier kind than the one that is shown; undefined where the course has none. */
  get easier(): TitledKind | undefined {
    const kind = this.item && this.kind(this.item.kind);
    return kind && easierKind(kind, this.#from.course.kinds);
  }

  /** Puts an exercise of an easier kind before the one that is shown, which keeps what was typed. */
  easierFirst(): void {
    const { easier, items, at } = this;
    if (easier) this.#set(items.toSpliced(at, 0, this.#fresh(easier.id, items)), at);
  }

  forget(): void {
    this.#kept.value = null;
  }

  get #choosing(): Choosing {
    const { record, settings } = this.#from;
    return {
      kinds: this.mix,
      attempts: record.attempts,
      today: today(),
      horizonDay: settings.horizonDay,
      dayOf: localDay,
    };
  }

  readonly #isRead = (slug: string): boolean => {
    const { course, progress } = this.#from;
    const lesson = course.lessons.find((one) => one.slug === slug);
    return lesson !== undefined && progress.farthest(slug) >= lesson.steps;
  };

  #fresh(kind: string, items: readonly SetItem[]): SetItem {
    const used = [...this.#from.record.of(kind), ...items].map(({ seed }) => seed);
    return { kind, seed: unusedSeed(freshSeed, used) };
  }

  #set(items: readonly SetItem[], at: number): void {
    this.#kept.value = { day: this.day ?? today(), items, at };
  }
}

function isKeptSet(value: unknown): value is KeptSet | null {
  if (value === null) return true;
  if (typeof value !== 'object') return false;
  const { day, items, at } = value as Record<string, unknown>;
  return (
    Number.isInteger(day) &&
    Number.isInteger(at) &&
    Array.isArray(items) &&
    items.every((item: unknown) => {
      const { kind, seed } = (item ?? {}) as Record<string, unknown>;
      return typeof kind === 'string' && typeof seed === 'string';
    })
  );
}
