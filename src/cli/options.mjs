import { parseArgs } from 'node:util';
import { Complaint } from './complaint.mjs';

/**
 * Reads a command's options, each of which takes a value (`text`) or none (`flag`).
 *
 * @template {Readonly<Record<string, 'text' | 'flag'>>} Table
 * @param {readonly string[]} words the words after the command
 * @param {Table} table
 * @param {string} usage shown when the words make no sense
 * @returns {{ readonly [Name in keyof Table]?: Table[Name] extends 'flag' ? boolean : string }}
 */
export function readOptions(words, table, usage) {
  const options = Object.fromEntries(
    Object.entries(table).map(([name, kind]) => [
      name,
      {
        type: kind === 'flag' ? /** @type {const} */ ('boolean') : /** @type {const} */ ('string'),
      },
    ]),
  );
  try {
    // The values have the kinds that the table asks for: parseArgs throws otherwise.
    return /** @type {any} */ (parseArgs({ args: [...words], options }).values);
  } catch (error) {
    const reason = error instanceof Error ? error.message.split('. ')[0] : String(error);
    throw new Complaint(`${reason}.\n\n${usage}`);
  }
}
