// npm start [-- --port NUMBER --host ADDRESS]: installs, builds what has changed, serves.

import { spawn } from 'node:child_process';
import { mustBeFree, readAddress, USAGE } from './address.mjs';
import { runCommand } from './complaint.mjs';
import { installIfNeeded } from './install.mjs';
import { childEnvironment, pinnedNode } from './pinned-node.mjs';
import { inProject } from './project.mjs';
import { buildIfStale } from './site.mjs';

/** Taken down before anything else, since npm may be gone by the time the site is built. */
const parent = process.ppid;

await runCommand(USAGE, async (words) => {
  await mustBeFree(readAddress(words, process.env));
  await installIfNeeded();
  await buildIfStale();
  process.exitCode = await serve(words);
});

/**
 * Runs the server on the pinned Node until it stops. It stops when the channel to us closes: by
 * our doing on Ctrl-C, or because we are gone.
 *
 * @param {readonly string[]} words
 * @returns {Promise<number>} its exit code
 */
function serve(words) {
  const server = spawn(pinnedNode(), [inProject('src/cli/serve.mjs'), ...words], {
    stdio: ['inherit', 'inherit', 'inherit', 'ipc'],
    env: childEnvironment(),
  });
  const stop = () => {
    if (server.connected) server.disconnect();
  };
  process.on('SIGINT', stop).on('SIGTERM', stop).on('SIGHUP', stop);
  if (process.env['npm_lifecycle_event']) whenOrphaned(stop);
  return new Promise((resolve) => {
    server.once('exit', (code) => {
      resolve(code ?? 1);
    });
  });
}

/**
 * Calls back when the parent process is gone. When npm is told to end, it ends the shell between us
 * and itself, and that shell does not pass the message on.
 *
 * @param {() => void} callback
 */
function whenOrphaned(callback) {
  setInterval(() => {
    if (process.ppid !== parent) callback();
  }, 500).unref();
}
