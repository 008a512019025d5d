import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { Complaint } from './complaint.mjs';
import { inProject, projectFolder } from './project.mjs';
import { runTool } from './run.mjs';
import { fingerprint } from './sources.mjs';

/** Says what the built server was made from. Building empties the folder first, so a broken-off build has none. */
const stamp = inProject('build/.sources');

/**
 * Builds the site: as a Node server into build/, or as plain files into build-static/.
 *
 * @param {'server' | 'static'} kind
 * @param {'info' | 'warn'} [telling] whether to list the files made, or to speak of trouble only
 * @returns {Promise<boolean>} whether it worked
 */
export async function buildSite(kind, telling = 'info') {
  // Before the build: what is edited meanwhile counts as a change after it.
  const sources = fingerprint(projectFolder);
  const code = await runTool('vite', 'vite', ['build', '--logLevel', telling], {
    KNUCKLEBOOK_BUILD: kind,
  });
  if (code === 0 && kind === 'server') writeFileSync(stamp, sources);
  return code === 0;
}

/** Builds the server unless the one in build/ was made from these very sources. */
export async function buildIfStale() {
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === fingerprint(projectFolder)) return;
  console.log('Building the site; this may take a minute.');
  if (!(await buildSite('server', 'warn')))
    throw new Complaint('The site could not be built; the reason stands above.');
}
