// npm run audit:exercises: goes through ten thousand exercises of every kind and says what does not hold.

import { parseArgs } from 'node:util';
import { tryChecks } from '#exercises/audit/check.ts';
import { CHECKS } from '#exercises/audit/checks.ts';
import { figureFaults, figuresOf } from '#exercises/audit/figures.ts';
import { simulate, simulationFaults } from '#exercises/audit/simulate.ts';
import { isKindId, KIND_IDS, loadKind, type ExerciseKind } from '#exercises/registry.ts';
import { exercisesOf } from './every-kind.ts';
import { TEXTBOOK_CHECKS } from './textbook-checks.ts';

const USAGE = `Usage: npm run audit:exercises -- [--seeds COUNT] [KIND …]

Draws COUNT exercises (10000 unless said) of each KIND (all unless named), tries on them whatever has to hold of
an exercise, and lets simulated learners work them: one without a mistake, one for each slip, one who slips in
the first part and carries on, one who guesses. The last line says how many kinds have faults; with any, the
exit status is 1.

  draws    items drawn for one exercise, on average and at most
  answers  sets of answers that can be told apart (two tolerances wide)
  signs.   signatures, that is sorts of equal difficulty, and how often the rarest comes up
  perfect  what work without a mistake earns
  slips    slips, and how often the one found least is called by its name
  carried  what a slip in the first part leaves of the other parts, where it is carried on
  guesses  what guesses earn`;

const { values, positionals } = read();
const seeds = Number(values.seeds ?? 10_000);
const unknown = positionals.filter((id) => !isKindId(id));
if (values.help) {
  console.log(USAGE);
} else if (unknown.length > 0 || !Number.isInteger(seeds) || seeds < 1) {
  const wrong =
    unknown.length > 0 ? `no kind is called ${unknown.join(', ')}` : 'seeds are counted';
  console.error(`${wrong}\n\n${USAGE}`);
  process.exitCode = 2;
} else {
  const ids = positionals.length > 0 ? positionals.filter(isKindId) : KIND_IDS;
  process.exitCode = (await audit(ids.map(loadKind))) > 0 ? 1 : 0;
}

function read() {
  try {
    return parseArgs({
      allowPositionals: true,
      options: { seeds: { type: 'string' }, help: { type: 'boolean' } },
    });
  } catch (error) {
    console.error(`${error instanceof Error ? error.message : String(error)}\n\n${USAGE}`);
    process.exit(2);
  }
}

/** Writes a line a kind as it goes, since all of them take minutes; gives the count of kinds with faults. */
async function audit(kinds: readonly Promise<ExerciseKind>[]): Promise<number> {
  console.log(row('kind', 'draws', 'answers', 'signs.', 'perfect', 'slips', 'carried', 'guesses'));
  const faults: string[] = [];
  let faulty = 0;
  for (const one of kinds) {
    const kind = await one;
    const exercises = exercisesOf(kind, seeds);
    const figures = figuresOf(exercises);
    const learners = simulate(kind.id, exercises);
    const own = [
      ...figureFaults(figures),
      ...simulationFaults(learners),
      ...tryChecks([...CHECKS, ...TEXTBOOK_CHECKS], exercises).flatMap(
        ({ check, exercises: count, first }) => [
          `fails in ${count} exercises: “${check.says}”`,
          ...first.map((line) => `  ${line}`),
        ],
      ),
    ];
    console.log(
      row(
        kind.id,
        `${figures.meanDraws.toFixed(2)} ≤${figures.mostDraws}`,
        String(figures.answers),
        `${figures.signatures.size} ≥${percent(Math.min(...figures.signatures.values()))}`,
        percent(learners.perfect),
        `${learners.named.size} ≥${percent(Math.min(...learners.named.values()))}`,
        percent(learners.carriedOn),
        percent(learners.guessed),
        own.length > 0 ? 'FAULTS' : '',
      ),
    );
    if (own.length > 0) faulty += 1;
    faults.push(...own.map((line) => `${kind.id} ${line}`));
  }
  if (faults.length > 0) console.log(`\n${faults.join('\n')}`);
  console.log(`\n${kinds.length} kinds, ${seeds} seeds each: ${faulty} with faults`);
  return faulty;
}

function row(name: string, ...cells: readonly string[]): string {
  return [name.padEnd(28), ...cells.map((cell) => cell.padStart(11))].join('').trimEnd();
}

function percent(share: number): string {
  return `${Number((100 * share).toFixed(1))} %`;
}
