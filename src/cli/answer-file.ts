import type { Outcome } from '#core/fault.ts';
import { commandWords } from './command-words.ts';
import { answerDocuments } from './documents.ts';
import { jsonInput } from './json-input.ts';
import { answering, Refusal } from './refusal.ts';

/** Runs a command that takes one file, or standard input, and answers each document in it. */
export const answerFile = (
  usage: string,
  answer: (document: unknown) => Outcome<unknown>,
): Promise<void> =>
  answering(async () => {
    const { help, words } = commandWords(process.argv.slice(2), usage);
    if (help) return usage;
    if (words.length > 1) throw new Refusal(`one file at a time, please\n\n${usage}`);
    return answerDocuments(await jsonInput(words[0]), answer);
  });
