import type { Attempt } from '../record/attempt.ts';
import type { DayOf } from '../record/day.ts';
import { confusableWith } from './confusable.ts';
import { interleaved } from './interleaved.ts';
import type { ListedKind } from './listed-kind.ts';
import { chanceKnown, memoryOf, type Memory } from './memory.ts';
import { dueDay } from './spacing.ts';

/** What a set is chosen from. */
export interface Choosing {
  /** The kinds that may be asked, in the order of the course. */
  readonly kinds: readonly ListedKind[];
  readonly attempts: readonly Attempt[];
  /** Numbers of days, as `dayOf` counts them. */
  readonly today: number;
  readonly horizonDay?: number | undefined;
  readonly dayOf: DayOf;
}

/** How a kind stands on a day. */
interface Standing {
  readonly kind: ListedKind;
  /** Absent where it has never been tried. */
  readonly memory?: Memory;
  readonly due?: number;
}

/** At most this share of a set is new. */
const NEW_SHARE = 1 / 2;

/** No kind is in a set more often than this. */
const MOST_OF_A_KIND = 2;

/** What is remembered of every kind that may be asked, and when it is due. */
function standings({ kinds, attempts, horizonDay, dayOf }: Choosing): readonly Standing[] {
  return kinds.map((kind) => {
    const own = attempts.filter((attempt) => attempt.kind === kind.id);
    const memory = memoryOf(own, dayOf);
    return memory ? { kind, memory, due: dueDay(memory, horizonDay) } : { kind };
  });
}

/**
 * The kinds to ask today, in the order to ask them: first what is due, most forgotten first, then some that are new,
 * whose prerequisites have been met; beside each what it is easily taken for, where there is room. May be
 * shorter than asked for, and empty where nothing is due.
 */
export function dueKinds(choosing: Choosing, size: number): readonly ListedKind[] {
  const all = standings(choosing);
  const { today } = choosing;
  const chosen = mostForgotten(all, today)
    .filter(({ due }) => due !== undefined && due <= today)
    .slice(0, size)
    .map(({ kind }) => kind);
  const room = Math.min(size - chosen.length, Math.ceil(size * NEW_SHARE));
  chosen.push(...ready(all).slice(0, room));
  // What was recalled today is still fresh: beside another it would only be repeated.
  const idle = all.filter(({ memory }) => memory && memory.day < today).map(({ kind }) => kind);
  for (const { id } of [...chosen]) {
    const beside = confusableWith(id);
    const partner = idle.find((kind) => beside.includes(kind.id) && !chosen.includes(kind));
    if (partner && chosen.length < size) chosen.push(partner);
  }
  return interleaved(chosen);
}

/** A full set whether anything is due or not: what is due, then what is the least well known, then what is new. */
export function kindsAllTheSame(choosing: Choosing, size: number): readonly ListedKind[] {
  const all = standings(choosing);
  const due = dueKinds(choosing, size);
  const order = new Set([
    ...due,
    ...mostForgotten(all, choosing.today).map(({ kind }) => kind),
    ...ready(all),
  ]);
  const rounds = Array.from({ length: MOST_OF_A_KIND }, () => [...order]).flat();
  // One kind alone, over and over, would be no mix.
  return interleaved(order.size > 1 ? rounds.slice(0, size) : [...order]);
}

/** The first day from today on for which something is due; undefined where nothing has been tried. */
export function nextDue(choosing: Choosing): number | undefined {
  const days = standings(choosing).flatMap(({ due }) => due ?? []);
  return days.length === 0 ? undefined : Math.max(choosing.today, Math.min(...days));
}

/** Kinds that have been tried, the one least likely to be known first. */
const mostForgotten = (all: readonly Standing[], today: number): readonly Standing[] =>
  all
    .flatMap((one) => (one.memory ? { ...one, chance: chanceKnown(one.memory, today) } : []))
    .toSorted((a, b) => a.chance - b.chance);

/**
 * New kinds that may be begun, in the order of lessons, the easier ones of a lesson first. What a kind needs has been
 * tried before, as far as it may be asked at all.
 */
function ready(all: readonly Standing[]): readonly ListedKind[] {
  const untried = new Set(all.filter(({ memory }) => !memory).map(({ kind }) => kind.id));
  const lessons = [...new Set(all.map(({ kind }) => kind.lesson))];
  return all
    .map(({ kind }) => kind)
    .filter(({ id, needs }) => untried.has(id) && !needs.some((need) => untried.has(need)))
    .toSorted((a, b) => lessons.indexOf(a.lesson) - lessons.indexOf(b.lesson) || a.level - b.level);
}
