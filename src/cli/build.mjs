// npm run build [-- --static]: builds the site as a Node server (build/) or as plain files (build-static/).

import { Complaint, runCommand } from './complaint.mjs';
import { installIfNeeded } from './install.mjs';
import { readOptions } from './options.mjs';
import { buildSite } from './site.mjs';

const USAGE = `Usage: npm run build -- [--static]

  --static   plain files into build-static/, instead of a Node server into build/`;

await runCommand(USAGE, async (words) => {
  const options = readOptions(words, { static: 'flag' }, USAGE);
  await installIfNeeded();
  if (!(await buildSite(options.static ? 'static' : 'server')))
    throw new Complaint('The site could not be built; the reason stands above.');
});
