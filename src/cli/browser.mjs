import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { Complaint } from './complaint.mjs';
import { childEnvironment, pinnedNode } from './pinned-node.mjs';
import { inProject } from './project.mjs';
import { run, runTool } from './run.mjs';

/**
 * Sees to it that there is a browser for the tests: one that is installed, otherwise Debian's (where
 * we may install it unasked: as root, in continuous integration), otherwise Playwright's own.
 *
 * @returns {Promise<boolean>} whether there is one
 */
export async function browserIsThere() {
  const named = process.env['KNUCKLEBOOK_BROWSER'];
  if (named && !existsSync(named))
    throw new Complaint(`KNUCKLEBOOK_BROWSER is "${named}"; allowed: the full path of a browser.`);
  if (found()) return true;
  if (mayInstallPackages() && (await installPackage('chromium')) && found()) return true;
  console.log("No browser found; downloading Playwright's.");
  if ((await runTool('@playwright/test', 'playwright', ['install', 'chromium'])) === 0) return true;
  console.error(
    'There is no browser to test with. Install Chromium or Chrome, or name one in KNUCKLEBOOK_BROWSER.',
  );
  return false;
}

/** Asks in a process of its own, since the answer is TypeScript and this may be an older Node. */
function found() {
  const question = [inProject('tests/browser/find-browser.ts')];
  return spawnSync(pinnedNode(), question, { env: childEnvironment() }).status === 0;
}

const mayInstallPackages = () =>
  Boolean(process.env['CI']) && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');

/** @param {string} name */
async function installPackage(name) {
  console.log(`No browser found; installing ${name}.`);
  const options = { env: childEnvironment({ DEBIAN_FRONTEND: 'noninteractive' }) };
  if ((await run('apt-get', ['-qq', 'update'], options)) !== 0) return false;
  const words = ['-qq', 'install', '-y', '--no-install-recommends', name];
  return (await run('apt-get', words, options)) === 0;
}
