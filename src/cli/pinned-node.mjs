import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter } from 'node:path';
import { Complaint } from './complaint.mjs';
import { inProject } from './project.mjs';

/** The first Node that runs TypeScript files as they are and has all of node:sqlite that we use. */
const OLDEST_MAJOR = 24;

/** The Node that package.json pins, installed with the other packages. */
const installedNode = inProject(
  'node_modules/node/bin',
  process.platform === 'win32' ? 'node.exe' : 'node',
);

/** The full path of the Node to run everything on: the pinned one, or our own where that one cannot run. */
export function pinnedNode() {
  if (existsSync(installedNode) && spawnSync(installedNode, ['--version']).status === 0)
    return installedNode;
  if (Number.parseInt(process.versions.node) >= OLDEST_MAJOR) return process.execPath;
  throw new Complaint(
    `Knucklebook runs on Node ${OLDEST_MAJOR}, which npm installs with the other packages, but that copy is\n` +
      `missing or does not run here, and this Node is ${process.version}.\n` +
      `Try "npm rebuild node", or install Node ${OLDEST_MAJOR} and run the command again.`,
  );
}

/**
 * Our environment with the installed tools, the pinned Node among them, first on the PATH.
 *
 * @param {NodeJS.ProcessEnv} [more]
 * @returns {NodeJS.ProcessEnv}
 */
export function childEnvironment(more = {}) {
  const path = Object.keys(process.env).find((name) => name.toUpperCase() === 'PATH') ?? 'PATH';
  return {
    ...process.env,
    [path]: [inProject('node_modules/.bin'), process.env[path] ?? ''].join(delimiter),
    ...more,
  };
}
