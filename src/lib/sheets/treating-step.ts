import { QUANTITIES } from '#core/quantities.ts';
import type { LessonFacts } from '$lib/lesson/lesson';

/** What has to be known of a lesson to send somebody to the right step of it. */
export interface LessonOutline {
  readonly slug: string;
  readonly title: string;
  readonly steps: readonly {
    readonly title: string;
    /** Names of the quantities that its figure dimensions. */
    readonly measures: readonly string[];
    /** What its figure lets one move. */
    readonly controls: readonly string[];
  }[];
}

export const outlineOf = ({ slug, title, steps }: LessonFacts): LessonOutline => ({
  slug,
  title,
  steps: steps.map(({ title: heading, look }) => ({
    title: heading,
    measures: look.measures.map((id) => QUANTITIES[id].name),
    controls: look.controls,
  })),
});

/** What went wrong: the quantity asked for, and what was taken for something else. */
interface Trouble {
  readonly asks: string;
  readonly confuses: string;
  /** The id of the kind, whose words say what is done to the car. */
  readonly kind: string;
}

/**
 * The step of the lesson, from 1, that treats a slip best: where its quantity is first dimensioned, where the thing
 * that is confused or changed can be moved, or whose heading names one of them. The earliest of equals.
 */
export function treatingStep({ steps }: LessonOutline, trouble: Trouble): number {
  const words = wordsOf(`${trouble.confuses} ${trouble.kind.replaceAll('-', ' ')}`);
  let best = 1;
  let most = 0;
  for (const [index, { title, measures, controls }] of steps.entries()) {
    const before = steps[index - 1]?.measures ?? [];
    const heading = wordsOf(title);
    const moved = controls.flatMap((control) => wordsOf(control.replaceAll(/([A-Z])/g, ' $1')));
    const score =
      (measures.includes(trouble.asks) ? 2 : 0) +
      (measures.includes(trouble.asks) && !before.includes(trouble.asks) ? 1 : 0) +
      (words.some((word) => moved.includes(word)) ? 2 : 0) +
      (words.some((word) => heading.includes(word)) ? 1 : 0);
    if (score <= most) continue;
    most = score;
    best = index + 1;
  }
  return best;
}

/** Words that carry meaning. */
const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word.length > 3 && !['from', 'with', 'both', 'wheel'].includes(word));
