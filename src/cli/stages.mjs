import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { browserIsThere } from './browser.mjs';
import { honest, NONE, one, playwrightCounts, sum, vitestCounts } from './counts.mjs';
import { inProject } from './project.mjs';
import { pinnedNode } from './pinned-node.mjs';
import { run, runTool } from './run.mjs';
import { buildIfStale, buildSite } from './site.mjs';

/**
 * One stage of `npm test`.
 *
 * @typedef {object} Stage
 * @property {string} name what --only takes
 * @property {string} title what it looks at
 * @property {(reports: string) => Promise<import('./counts.mjs').Counts>} run gets a folder for its report
 */

/** @type {readonly Stage[]} */
export const STAGES = [
  {
    name: 'format',
    title: 'formatting (Prettier)',
    run: () => tool('prettier', 'prettier', ['--check', '--log-level=warn', '.']),
  },
  {
    name: 'lint',
    title: 'questionable code (ESLint)',
    run: () => tool('eslint', 'eslint', ['--max-warnings=0', '.']),
  },
  {
    name: 'types',
    title: 'types (TypeScript, Svelte)',
    run: () => tool('svelte-check', 'svelte-check', ['--fail-on-warnings']),
  },
  {
    name: 'unused',
    title: 'unused files, exports, packages (Knip)',
    run: () => tool('knip', 'knip', ['--no-progress']),
  },
  { name: 'unit', title: 'tests without a browser (Vitest)', run: unit },
  {
    name: 'build',
    title: 'build as a Node server',
    run: async () => one(await buildSite('server')),
  },
  {
    name: 'static',
    title: 'build as plain files, every page and link looked at',
    run: async () => {
      const built = (await buildSite('static')) && hasFirstPage();
      return built ? sum([one(true), one(await pagesAreSound())]) : one(false);
    },
  },
  { name: 'browser', title: 'tests in a browser (Playwright)', run: browser },
];

/** A build of plain files is of no use unless its pages are made beforehand. */
function hasFirstPage() {
  const there = existsSync(inProject('build-static/index.html'));
  if (!there) console.error('build-static/ has no index.html: the first page is not prerendered.');
  return there;
}

/** In a process of its own: it is TypeScript, and this may be an older Node. */
const pagesAreSound = async () =>
  (await run(pinnedNode(), [inProject('src/cli/pages/check-pages.ts')])) === 0;

/**
 * @param {string} packageName
 * @param {string} name
 * @param {readonly string[]} words
 */
const tool = async (packageName, name, words) =>
  one((await runTool(packageName, name, words)) === 0);

/** @param {string} reports */
async function unit(reports) {
  const report = join(reports, 'unit.json');
  const code = await runTool('vitest', 'vitest', [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ]);
  return countsFrom(report, vitestCounts, code);
}

/** @param {string} reports */
async function browser(reports) {
  await buildIfStale();
  if (!(await browserIsThere())) return one(false);
  const report = join(reports, 'browser.json');
  const words = ['test', '--reporter=list,json'];
  const code = await runTool('@playwright/test', 'playwright', words, {
    PLAYWRIGHT_JSON_OUTPUT_FILE: report,
  });
  return countsFrom(report, playwrightCounts, code);
}

/**
 * @param {string} file a report in JSON
 * @param {(report: any) => import('./counts.mjs').Counts} read
 * @param {number} code the exit code of the run that wrote it
 */
function countsFrom(file, read, code) {
  try {
    return honest(read(JSON.parse(readFileSync(file, 'utf8'))), code === 0);
  } catch (error) {
    console.error(`There is no usable report of this run: ${String(error)}`);
    return honest(NONE, false);
  }
}
