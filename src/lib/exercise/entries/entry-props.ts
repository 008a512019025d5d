/** What is wrong with what was typed, and where. */
export interface EntryProblem {
  readonly place: 'number' | 'word';
  readonly message: string;
}

/** What every way to enter an answer is told, and what it tells. */
export interface EntryProps {
  text: string;
  word: 'positive' | 'negative' | undefined;
  problem?: EntryProblem | undefined;
  disabled?: boolean;
  onsubmit: () => void;
}

/** The same where nothing is typed: an answer is one letter, or several in order. */
export type LetterProps = Pick<EntryProps, 'text' | 'problem' | 'disabled'>;
