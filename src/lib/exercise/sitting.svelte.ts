import type { DrawnPart, Exercise } from '#exercises/exercise.ts';
import { grade, type Entry, type Marks } from '#exercises/grade.ts';
import { readEntry } from '#exercises/read-entry.ts';
import type { Sureness } from '#exercises/record/attempt.ts';
import { respond, type Response } from '#exercises/respond.ts';
import { fitsParts, type Draft } from './draft';
import type { EntryProblem } from './entries/entry-props';

/** One field of an exercise as the learner has left it. */
export class Field {
  readonly part: DrawnPart;
  text = $state('');
  word = $state<'positive' | 'negative'>();
  problem = $state.raw<EntryProblem>();
  response = $state.raw<Response>();
  /** Worked for the learner: shown, not asked. */
  readonly worked: boolean;

  constructor(part: DrawnPart, worked: boolean) {
    this.part = part;
    this.worked = worked;
  }
}

interface SittingOptions {
  /** How many parts, counted from the first, are worked for the learner. */
  readonly worked: number;
  /** Whether only the last part is asked at first, so that the way there has to be recalled. */
  readonly brief?: boolean;
  /** What was typed before. */
  readonly draft?: Draft | undefined;
}

/** One sitting at one exercise: what has been entered, what was answered, how many tries it took. */
export class Sitting {
  readonly exercise: Exercise;
  readonly fields: readonly Field[];
  /** Whether the worked solution stands there, and whether it ever has. */
  solutionShown = $state(false);
  solutionSeen = $state(false);
  hints = $state.raw<readonly number[]>([]);
  checks = $state(0);
  marks = $state.raw<Marks>();
  /** Whether the parts before the last one are asked too. */
  stepsOpen = $state(true);
  /** What the learner says of the answer before being told. */
  sure = $state<Sureness>();
  readonly done = $derived(this.marks !== undefined && this.marks.earned === this.marks.possible);

  constructor(exercise: Exercise, { worked, brief = false, draft }: SittingOptions) {
    this.exercise = exercise;
    this.fields = exercise.parts.map((part, i) => new Field(part, i < worked));
    this.stepsOpen = !brief || worked > 0;
    if (draft && fitsParts(draft, exercise.parts.length)) this.#restore(draft);
  }

  /** Reads and grades what is entered; returns the marks, or nothing where a field cannot be read. */
  check(): Marks | undefined {
    const marks = this.#grade();
    if (marks) this.checks += 1;
    return marks;
  }

  hint(index: number): void {
    this.hints = [...this.hints, index];
  }

  toggleSolution(): void {
    this.solutionShown = !this.solutionShown;
    this.solutionSeen = true;
  }

  /** Whether a part is on the page. */
  asks(index: number): boolean {
    return this.stepsOpen || index === this.fields.length - 1;
  }

  /** Whether anything would be lost with it. */
  get touched(): boolean {
    return (
      this.checks > 0 ||
      this.hints.length > 0 ||
      this.solutionSeen ||
      this.fields.some(({ text, word }) => text !== '' || word !== undefined)
    );
  }

  /** Everything that a reload would lose, but for how much help there was and when. */
  snapshot(): Omit<Draft, 'worked' | 'at'> {
    return {
      fields: this.fields.map(({ text, word }) => ({ text, word })),
      hints: this.hints,
      checks: this.checks,
      solutionShown: this.solutionShown,
      solutionSeen: this.solutionSeen,
      stepsOpen: this.stepsOpen,
      sure: this.sure,
    };
  }

  #grade(): Marks | undefined {
    const entries: Entry[] = this.fields.map((field) => {
      field.problem = undefined;
      if (field.worked) return field.part.answer;
      const reading = readEntry({ text: field.text, word: field.word }, field.part.definition);
      if (reading.kind === 'problem') {
        field.problem = reading;
        // What was said of an earlier entry is not true of this one.
        field.response = undefined;
      }
      return reading.kind === 'value' ? reading.value : undefined;
    });
    if (this.fields.some((field) => field.problem)) return undefined;
    const marks = grade(this.exercise, entries);
    this.marks = marks;
    // Whoever went wrong is met on the way, not only at its end.
    if (marks.earned < marks.possible) this.stepsOpen = true;
    this.fields.forEach((field, i) => {
      field.response = field.worked ? undefined : respond(this.exercise, entries, i);
    });
    return marks;
  }

  #restore({ fields, hints, checks, stepsOpen, sure, ...solution }: Draft): void {
    for (const [i, { text, word }] of fields.entries()) {
      const field = this.fields[i];
      if (!field) continue;
      field.text = text;
      field.word = word;
    }
    this.hints = hints;
    this.solutionShown = solution.solutionShown;
    this.solutionSeen = solution.solutionSeen;
    this.stepsOpen ||= stepsOpen;
    this.sure = sure;
    this.checks = checks;
    if (checks > 0) this.#grade();
  }
}
