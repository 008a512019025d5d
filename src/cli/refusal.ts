/** Something wrong with what we were given, said on standard error line by line. */
export class Refusal extends Error {}

/** Runs a command: what it answers goes to standard output; a refusal to standard error, with exit status 2. */
export async function answering(answer: () => Promise<string>): Promise<void> {
  try {
    console.log(await answer());
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    console.error(error.message);
    process.exitCode = 2;
  }
}

export function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
