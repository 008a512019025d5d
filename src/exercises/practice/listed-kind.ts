/** What choosing has to know of an exercise kind; lists of them are in the order of the course. */
export interface ListedKind {
  readonly id: string;
  /** Lesson that teaches it, by its address. */
  readonly lesson: string;
  readonly level: 1 | 2 | 3;
  /** Kinds that its lesson looks back to: what is to be known before. */
  readonly needs: readonly string[];
}
