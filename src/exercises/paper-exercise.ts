import { isList } from './forms/form.ts';
import { letterOf } from './forms/rank.ts';
import { phrase, type Phrase } from './phrase.ts';
import type { SheetPicture } from './pictures/picture.ts';
import type { ExerciseKind } from './registry.ts';

/** An exercise as it can be printed: its question, and its worked solution part by part. */
export interface PaperExercise {
  readonly kind: string;
  readonly title: string;
  readonly question: Phrase;
  /** What there is to choose or to put in order, and the rows of a sheet. */
  readonly lines: readonly Phrase[];
  readonly solution: readonly Phrase[];
  /** Whether the question speaks of a drawing, which words and lines cannot give. */
  readonly drawn: boolean;
  /** An easier kind to do first, where the course has one. */
  readonly easier?: string;
}

/** The exercise that a seed draws of a kind, as it can be printed. */
export function onPaper({ id, title, exercise }: ExerciseKind, seed: string): PaperExercise {
  const { question, parts, picture } = exercise(seed);
  const shown = picture?.();
  return {
    kind: id,
    title,
    question: question(),
    lines: [
      ...(shown?.scene === 'sheet' ? rowsOf(shown) : []),
      ...parts.flatMap(({ definition: { form } }) =>
        isList(form)
          ? form.options.map(({ words }, i) => phrase`${{ figure: letterOf(i) }} ${words}`)
          : [],
      ),
    ],
    solution: parts.map((part) => part.solution()),
    drawn:
      (shown !== undefined && shown.scene !== 'sheet') ||
      parts.some(({ definition: { form } }) => form?.kind === 'set'),
  };
}

const rowsOf = ({ columns, rows }: SheetPicture): readonly Phrase[] =>
  rows.map(
    ({ name, cells }) =>
      phrase`${name}: ${cells.flatMap((figure, i) => [`${i > 0 ? ', ' : ''}${columns[i] ?? ''} `, { figure }])}`,
  );
