import { faultLine, faultsOf, type Outcome } from '#core/fault.ts';
import { Refusal } from './refusal.ts';

/**
 * Answers one document, or each of a list: in the same shape as JSON, or not at all where anything is wrong with
 * any of them.
 */
export async function answerDocuments(
  value: unknown,
  answer: (document: unknown) => Outcome<unknown> | Promise<Outcome<unknown>>,
): Promise<string> {
  const outcomes: Outcome<unknown>[] = [];
  for (const document of Array.isArray(value) ? value : [value])
    outcomes.push(await answer(document));
  const lines = outcomes.flatMap((outcome, index) =>
    faultsOf(outcome).map((fault) => `document ${index + 1}: ${faultLine(fault)}`),
  );
  if (lines.length > 0) throw new Refusal(lines.join('\n'));
  const results = outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
  return JSON.stringify(Array.isArray(value) ? results : results[0], null, 2);
}
