// Serves what stands in build/. `npm start` runs this after building; the browser tests run it too.

import { existsSync } from 'node:fs';
import { createServer } from 'node:http';
import { pathToFileURL } from 'node:url';
import { browserAddresses, listenComplaint, readAddress, USAGE } from './address.mjs';
import { Complaint, runCommand } from './complaint.mjs';
import { inProject } from './project.mjs';

/** Carries the protocol of a request to the built server, which otherwise believes that it is https. */
const PROTOCOL_HEADER = 'x-knucklebook-protocol';

/** How long a stopping server waits for answers under way, and then for what the site still has to do. */
const PATIENCE_MS = 3000;

await runCommand(USAGE, async (words) => {
  const address = readAddress(words, process.env);
  const server = createServer(await requestHandler());
  await listening(server, address);
  announce(address, server);
  stopsOnSignal(server);
});

/**
 * The built site's request handler.
 *
 * Over plain HTTP it must learn the protocol, or it takes every form for one sent from another site.
 * Naming the protocol and leaving the host to the request lets the site be opened by any of its
 * addresses, as a class room does. Behind a proxy that speaks https, ORIGIN or PROTOCOL_HEADER say it.
 *
 * @returns {Promise<import('node:http').RequestListener>}
 */
async function requestHandler() {
  const built = inProject('build/handler.js');
  if (!existsSync(built)) throw new Complaint('There is nothing built to serve; run npm start.');
  const { ORIGIN, PROTOCOL_HEADER: given } = process.env;
  if (ORIGIN && !/^https?:\/\/[^/]+\/?$/.test(ORIGIN))
    throw new Complaint(
      `ORIGIN is "${ORIGIN}"; allowed: the site's address without a path, such as https://book.example.org`,
    );
  const itself = !ORIGIN && !given;
  if (itself) process.env['PROTOCOL_HEADER'] = PROTOCOL_HEADER;
  /** @type {{ handler: import('node:http').RequestListener }} */
  const { handler } = await import(pathToFileURL(built).href);
  if (!itself) return handler;
  return (request, response) => {
    request.headers[PROTOCOL_HEADER] = 'http';
    handler(request, response);
  };
}

/**
 * @param {import('node:http').Server} server
 * @param {import('./address.mjs').Address} address
 * @returns {Promise<void>}
 */
function listening(server, address) {
  return new Promise((resolve, reject) => {
    server.once('error', (error) => {
      reject(listenComplaint(error, address));
    });
    server.listen({ ...address }, resolve);
  });
}

/**
 * @param {import('./address.mjs').Address} address
 * @param {import('node:http').Server} server knows the port when any free one was asked for
 */
function announce({ host, port }, server) {
  const at = server.address();
  const real = at !== null && typeof at === 'object' ? at.port : port;
  const [here, ...elsewhere] = browserAddresses({ host, port: real });
  console.log(`Knucklebook is at ${here}`);
  for (const address of elsewhere) console.log(`Others on this network open ${address}`);
  if (host === '127.0.0.1' || host === '::1')
    console.log('For phones or a class room on the same network: npm start -- --host 0.0.0.0');
  console.log('Ctrl-C stops it.');
}

/**
 * Lets answers under way finish, tells the site so that it can close its files, and ends.
 *
 * @param {import('node:http').Server} server
 */
function stopsOnSignal(server) {
  let stopping = false;
  const stop = () => {
    if (stopping) return;
    stopping = true;
    if (process.connected) process.disconnect();
    server.close(() => {
      // The event that the framework's own Node server sends, and that sites listen for.
      process.emit(/** @type {any} */ ('sveltekit:shutdown'), /** @type {any} */ ('SIGTERM'));
      setTimeout(() => process.exit(0), PATIENCE_MS).unref();
    });
    setTimeout(() => {
      server.closeAllConnections();
    }, PATIENCE_MS).unref();
  };
  process.on('SIGINT', stop).on('SIGTERM', stop).on('SIGHUP', stop).on('disconnect', stop);
}
