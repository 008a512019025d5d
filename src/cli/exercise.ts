// npm run -s exercise -- COMMAND FILE: draws, answers and grades exercises and sheets of them.

import { success, type Outcome } from '#core/fault.ts';
import { gradedTask } from '#exercises/batch/graded.ts';
import { readTask, type Task } from '#exercises/batch/task.ts';
import { answeredRecord, drawnRecord, writtenTask } from '#exercises/batch/written.ts';
import { commandWords } from './command-words.ts';
import { answerDocuments } from './documents.ts';
import { jsonInput } from './json-input.ts';
import { answering, Refusal } from './refusal.ts';

const USAGE = `Usage: npm run -s exercise -- COMMAND [FILE]

  draw     writes down exercises: the question, and what is to be entered
  answer   the same with answers, tolerances and worked solutions
  grade    marks entries, or what students have handed in on a sheet

Without FILE, or with - in its place, reads standard input. The input is JSON: one document, or a list of
them. So is the output, in the same shape. A document is an exercise or a sheet:

  { "kind": "spacer-scrub", "seed": "group-a" }
  { "sheet": { … }, "numbers": [1, 2, 3] }

To grade, give the entries of each part (a number in the unit asked for, with its sign, a text as it would be
typed, or null for nothing), or the results of a sheet (documents or codes):

  { "kind": "spacer-scrub", "seed": "group-a", "entries": [-9, "+11 mm"] }
  { "sheet": { … }, "results": [{ … }, "kb1 3x0qg … ."] }

A sheet is what the site publishes as a file; src/exercises/sheet/sheet.ts has its keys. Results that are
tampered with, belong to another sheet or come twice are listed as refused, with the reason.

Where a document is wrong, nothing is done. Standard error gets one line for each fault,
  document NUMBER: KEY: what is wrong; allowed: what is allowed
and the exit status is 2.`;

const COMMANDS: Readonly<Record<string, (task: Task) => Outcome<unknown>>> = {
  draw: (task) => success(writtenTask(task, drawnRecord)),
  answer: (task) => success(writtenTask(task, answeredRecord)),
  grade: gradedTask,
};

await answering(async () => {
  const { help, words } = commandWords(process.argv.slice(2), USAGE);
  if (help) return USAGE;
  const [name = '', file, ...more] = words;
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!command) throw new Refusal(`${nameless(name)}; allowed: draw, answer, grade\n\n${USAGE}`);
  if (more.length > 0) throw new Refusal(`one file at a time, please\n\n${USAGE}`);
  return answerDocuments(await jsonInput(file), async (document) => {
    const task = await readTask(document, name === 'grade' ? 'work' : 'nothing');
    return task.ok ? command(task.value) : task;
  });
});

function nameless(name: string): string {
  return name === '' ? 'what is to be done?' : `there is no command ${name}`;
}
