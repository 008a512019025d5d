import { existsSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { Complaint } from './complaint.mjs';
import { inProject } from './project.mjs';
import { run } from './run.mjs';

/**
 * The part of a lockfile that we read.
 *
 * @typedef {{ readonly packages: Readonly<Record<string, LockedPackage>> }} Lockfile
 * @typedef {{ readonly version?: string, readonly integrity?: string, readonly optional?: boolean }} LockedPackage
 */

/** Runs `npm ci` when packages are missing or are not those of the lockfile. */
export async function installIfNeeded() {
  const reason = reasonToInstall();
  if (reason === undefined) return;
  console.log(`Installing the packages: ${reason}.`);
  // Said outright, since npm hands its own settings (--silent, --omit=dev) down to us.
  const words = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  if ((await runNpm(words)) === 0) return;
  throw new Complaint(
    'The packages could not be installed; the reason stands above.\n' +
      'Without a network connection, try again when there is one; otherwise delete node_modules and try again.',
  );
}

/**
 * The first difference between the lockfile and what npm noted down when it last installed, in
 * words; undefined when there is none. Packages for other systems are optional and may be absent.
 *
 * @param {Lockfile} wanted
 * @param {Lockfile} installed
 * @returns {string | undefined}
 */
export function firstDifference(wanted, installed) {
  for (const [path, { version, integrity, optional }] of Object.entries(wanted.packages)) {
    if (path === '') continue;
    const found = installed.packages[path];
    if (found === undefined) {
      if (optional) continue;
      return `${nameOf(path)} is missing`;
    }
    if (found.version !== version || found.integrity !== integrity)
      return `${nameOf(path)} is not the version of the lockfile`;
  }
  const extra = Object.keys(installed.packages).find((path) => !(path in wanted.packages));
  return extra && `${nameOf(extra)} is no longer in the lockfile`;
}

function reasonToInstall() {
  const noted = inProject('node_modules/.package-lock.json');
  if (!existsSync(noted)) return 'there are none yet';
  return firstDifference(lockfile(inProject('package-lock.json')), lockfile(noted));
}

/**
 * @param {string} path
 * @returns {Lockfile}
 */
const lockfile = (path) => JSON.parse(readFileSync(path, 'utf8'));

/** @param {string} path such as `node_modules/a/node_modules/@b/c` */
const nameOf = (path) => path.split('node_modules/').at(-1) ?? path;

/** @param {readonly string[]} words */
function runNpm(words) {
  const script = process.env['npm_execpath'];
  return script && basename(script) === 'npm-cli.js'
    ? run(process.execPath, [script, ...words])
    : run('npm', words, { shell: process.platform === 'win32' });
}
