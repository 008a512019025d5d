// npm test [-- --only NAMES]: runs every stage, whatever the ones before it said, and counts.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Complaint, runCommand } from './complaint.mjs';
import { line, one, sum } from './counts.mjs';
import { installIfNeeded } from './install.mjs';
import { readOptions } from './options.mjs';
import { runTool } from './run.mjs';
import { STAGES } from './stages.mjs';

const USAGE = `Usage: npm test -- [--only NAME,NAME …] [--list]

  --only   only these stages
  --list   say which stages there are`;

await runCommand(USAGE, async (words) => {
  const { only, list } = readOptions(words, { only: 'text', list: 'flag' }, USAGE);
  if (list) {
    for (const { name, title } of STAGES) console.log(`${name.padEnd(8)} ${title}`);
    return;
  }
  const stages = only === undefined ? STAGES : chosen(only);
  await prepare();
  const reports = mkdtempSync(join(tmpdir(), 'knucklebook-'));
  const results = [];
  for (const stage of stages) results.push(await resultOf(stage, reports));
  rmSync(reports, { recursive: true });
  report(results);
});

/**
 * A stage and what became of it.
 *
 * @typedef {{ readonly stage: import('./stages.mjs').Stage, readonly counts: import('./counts.mjs').Counts, readonly seconds: number }} Result
 */

/** @param {string} names */
function chosen(names) {
  const wanted = names.split(',').map((name) => name.trim());
  const known = STAGES.map(({ name }) => name);
  const unknown = wanted.find((name) => !known.includes(name));
  if (unknown !== undefined)
    throw new Complaint(`There is no stage "${unknown}"; allowed: ${known.join(', ')}.`);
  return STAGES.filter(({ name }) => wanted.includes(name));
}

/** Installs, and has the framework write the types that a fresh clone lacks. */
async function prepare() {
  try {
    await installIfNeeded();
    await runTool('@sveltejs/kit', 'svelte-kit', ['sync']);
  } catch (error) {
    console.error(error instanceof Complaint ? error.message : error);
    throw new Complaint(line(one(false)));
  }
}

/**
 * @param {import('./stages.mjs').Stage} stage
 * @param {string} reports
 * @returns {Promise<Result>}
 */
async function resultOf(stage, reports) {
  console.log(`\n── ${stage.name}: ${stage.title} ──`);
  const start = performance.now();
  let counts = one(false);
  try {
    counts = await stage.run(reports);
  } catch (error) {
    console.error(error instanceof Complaint ? error.message : error);
  }
  const result = { stage, counts, seconds: (performance.now() - start) / 1000 };
  console.log(summary(result));
  return result;
}

/** @param {readonly Result[]} results */
function report(results) {
  const total = sum(results.map(({ counts }) => counts));
  console.log(`\n${results.map(summary).join('\n')}\n\n${line(total)}`);
  if (total.failed > 0) process.exitCode = 1;
}

/** @param {Result} result */
function summary({ stage, counts, seconds }) {
  return `${stage.name.padEnd(8)} ${line(counts)} (${seconds.toFixed(0)} s)`;
}
