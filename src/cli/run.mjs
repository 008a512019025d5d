import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { childEnvironment, pinnedNode } from './pinned-node.mjs';
import { inProject, projectFolder } from './project.mjs';

/**
 * Runs a program in the project's folder, its output going straight to the terminal.
 *
 * @param {string} program
 * @param {readonly string[]} words
 * @param {import('node:child_process').SpawnOptions} [options]
 * @returns {Promise<number>} its exit code; 1 when it could not be started or was ended by a signal
 */
export function run(program, words, options = {}) {
  return new Promise((resolve) => {
    const child = spawn(program, [...words], {
      cwd: projectFolder,
      stdio: 'inherit',
      env: childEnvironment(),
      ...options,
    });
    child.once('error', (error) => {
      console.error(`${program}: ${error.message}`);
      resolve(1);
    });
    child.once('exit', (code) => {
      resolve(code ?? 1);
    });
  });
}

/**
 * Runs a command-line tool of an installed package on the pinned Node. Going by the tool's own
 * script, not by node_modules/.bin, works alike on Windows.
 *
 * @param {string} packageName
 * @param {string} tool
 * @param {readonly string[]} words
 * @param {NodeJS.ProcessEnv} [environment] added to ours
 */
export function runTool(packageName, tool, words, environment) {
  const folder = inProject('node_modules', packageName);
  const { bin } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
  const script = typeof bin === 'string' ? bin : bin[tool];
  return run(pinnedNode(), [`${folder}/${script}`, ...words], {
    env: childEnvironment(environment),
  });
}
