/** Something the person at the keyboard can mend: shown as one plain message, without a stack trace. */
export class Complaint extends Error {}

/**
 * Runs a command's main function; a complaint is printed and ends the process with exit code 1.
 * With --help among its words, the command only says how it is used.
 *
 * @param {string} usage
 * @param {(words: readonly string[]) => Promise<void>} main gets the words after the command
 */
export async function runCommand(usage, main) {
  const words = process.argv.slice(2);
  if (words.includes('--help')) {
    console.log(usage);
    return;
  }
  try {
    await main(words);
  } catch (error) {
    if (!(error instanceof Complaint)) throw error;
    console.error(error.message);
    process.exitCode = 1;
  }
}
