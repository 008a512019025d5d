import { parseArgs } from 'node:util';
import { messageOf, Refusal } from './refusal.ts';

/** The words behind a command that takes no option but --help. */
export function commandWords(
  words: readonly string[],
  usage: string,
): { help: boolean; words: readonly string[] } {
  const options = { help: { type: 'boolean', short: 'h', default: false } } as const;
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options,
      allowPositionals: true,
    });
    return { help: values.help, words: positionals };
  } catch (error) {
    throw new Refusal(`${messageOf(error)}\n\n${usage}`);
  }
}
