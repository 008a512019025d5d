import type { ExerciseKind } from '../registry.ts';
import type { MarkedResult } from './mark-result.ts';
import type { Sheet } from './sheet.ts';

/** What a class earned at something. */
export interface Facility {
  readonly earned: number;
  readonly possible: number;
}

export interface PartFacts extends Facility {
  /** What is to be found, as its label says. */
  readonly label: string;
  /** How many students had it right, by themselves or from an earlier value of their own. */
  readonly right: number;
  readonly followOn: number;
  /** How many left it empty, or wrote what is no value. */
  readonly empty: number;
}

export interface ItemFacts extends Facility {
  readonly kind: string;
  readonly title: string;
  readonly students: number;
  readonly full: number;
  readonly parts: readonly PartFacts[];
}

export interface KindFacts extends Facility {
  readonly kind: string;
  readonly title: string;
  readonly level: number;
}

/** A known wrong road, and how many students took it in any attempt at the item. */
export interface SlipFacts {
  readonly position: number;
  readonly kind: string;
  readonly part: string;
  readonly label: string;
  readonly slip: string;
  readonly confuses: string;
  readonly students: number;
}

/** With fewer students than this a share says little, and counts are all there is. */
export const FEW = 30;

/** What was earned at each item of a sheet, and at each of its parts. */
export function itemFacts(
  sheet: Sheet,
  kinds: readonly ExerciseKind[],
  results: readonly MarkedResult[],
): readonly ItemFacts[] {
  return sheet.items.map(({ kind }, position) => {
    const items = results.flatMap(({ items: all }) => all[position] ?? []);
    const known = kinds[position];
    return {
      kind,
      title: known?.title ?? kind,
      students: items.length,
      full: items.filter(({ earned, possible }) => earned > possible * ALMOST).length,
      ...facility(items),
      parts: (known?.labels ?? []).map((label, i) => {
        const parts = items.flatMap(({ counted }) => counted.parts[i] ?? []);
        const count = (...verdicts: readonly string[]): number =>
          parts.filter(({ verdict }) => verdicts.includes(verdict)).length;
        return {
          label,
          ...facility(parts),
          right: count('right', 'implied'),
          followOn: count('follow-on'),
          empty: count('missing', 'unreadable'),
        };
      }),
    };
  });
}

/** The same by kind, where one stands on a sheet more than once. */
export function kindFacts(
  kinds: readonly ExerciseKind[],
  items: readonly ItemFacts[],
): readonly KindFacts[] {
  const ids = [...new Set(items.map(({ kind }) => kind))];
  return ids.flatMap((id) => {
    const kind = kinds.find((one) => one.id === id);
    if (!kind) return [];
    const own = items.filter((item) => item.kind === id);
    return [{ kind: id, title: kind.title, level: kind.level, ...facility(own) }];
  });
}

/** The wrong roads that were taken, the commonest first; ties as on the sheet. */
export function slipFacts(
  sheet: Sheet,
  kinds: readonly ExerciseKind[],
  results: readonly MarkedResult[],
): readonly SlipFacts[] {
  const counts = new Map<string, SlipFacts>();
  for (const { items } of results) {
    for (const [position, { attempts }] of items.entries()) {
      const seen = new Set<string>();
      for (const { parts } of attempts) {
        for (const [i, { slip }] of parts.entries()) {
          const key = `${position} ${i} ${slip?.id ?? ''}`;
          if (!slip || seen.has(key)) continue;
          seen.add(key);
          const label = kinds[position]?.labels[i] ?? '';
          const part = kinds[position]?.partIds[i] ?? '';
          const kind = sheet.items[position]?.kind ?? '';
          const { id, confuses } = slip;
          const students = (counts.get(key)?.students ?? 0) + 1;
          counts.set(key, { position, kind, part, label, slip: id, confuses, students });
        }
      }
    }
  }
  return [...counts.values()].sort((a, b) => b.students - a.students || a.position - b.position);
}

/** Shares of marks do not add up to the last digit. */
const ALMOST = 1 - 1e-9;

const facility = (marks: readonly Facility[]): Facility => ({
  earned: marks.reduce((sum, { earned }) => sum + earned, 0),
  possible: marks.reduce((sum, { possible }) => sum + possible, 0),
});
