import { createServer } from 'node:net';
import { networkInterfaces } from 'node:os';
import { Complaint } from './complaint.mjs';
import { readOptions } from './options.mjs';

/**
 * Where the server listens.
 *
 * @typedef {{ readonly host: string, readonly port: number }} Address
 */

export const USAGE = `Usage: npm start -- [--port NUMBER] [--host ADDRESS]

  --port   the port to serve at; otherwise PORT from the environment, otherwise 4173
  --host   127.0.0.1 serves this computer only; 0.0.0.0 serves the whole network, for phones
           and class rooms; otherwise HOST from the environment, otherwise 127.0.0.1`;

/**
 * The address from the command's options, the environment or the defaults, in that order.
 *
 * @param {readonly string[]} words the words after the command
 * @param {Readonly<Record<string, string | undefined>>} environment
 * @returns {Address}
 */
export function readAddress(words, environment) {
  const { port, host } = readOptions(words, { port: 'text', host: 'text' }, USAGE);
  return {
    port: portFrom(port === undefined ? 'PORT' : '--port', port ?? (environment['PORT'] || '4173')),
    host: hostFrom(host ?? (environment['HOST'] || '127.0.0.1')),
  };
}

/**
 * The addresses to type into a browser: the one for this computer first, then those for others.
 *
 * @param {Address} address
 * @returns {readonly [string, ...string[]]}
 */
export function browserAddresses({ host, port }) {
  const at = (/** @type {string} */ name) => `http://${name}:${port}`;
  if (host === '0.0.0.0' || host === '::') return [at('localhost'), ...networkAddresses().map(at)];
  if (host === '127.0.0.1' || host === '::1') return [at('localhost')];
  return [at(host.includes(':') ? `[${host}]` : host)];
}

/**
 * Complains now, rather than after a minute of building, when nothing can listen at the address.
 *
 * @param {Address} address
 * @returns {Promise<void>}
 */
export function mustBeFree({ host, port }) {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', (error) => {
      reject(listenComplaint(error, { host, port }));
    });
    probe.listen({ host, port }, () => {
      probe.close(() => {
        resolve();
      });
    });
  });
}

/**
 * What to tell a person when listening at the address failed.
 *
 * @param {NodeJS.ErrnoException} error
 * @param {Address} address
 */
export function listenComplaint({ code, message }, { host, port }) {
  switch (code) {
    case 'EADDRINUSE':
      return new Complaint(
        `Port ${port} is taken, perhaps by another Knucklebook that still runs.\n` +
          `Stop that program, or choose another port: npm start -- --port ${port < 65535 ? port + 1 : 4173}`,
      );
    case 'EACCES':
      return new Complaint(
        `This account may not serve at port ${port}.\n` +
          'Choose a port above 1023: npm start -- --port 4173',
      );
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
    case 'EAI_AGAIN':
      return new Complaint(
        `This computer has no address "${host}".\n` +
          'Choose 127.0.0.1 (this computer only) or 0.0.0.0 (the whole network): ' +
          'npm start -- --host 0.0.0.0',
      );
    default:
      return new Complaint(`Cannot serve at ${host}, port ${port}: ${message}`);
  }
}

/**
 * @param {string} name where the text came from
 * @param {string} text
 */
function portFrom(name, text) {
  const port = Number(text);
  if (/^\d+$/.test(text) && port <= 65535) return port;
  throw new Complaint(
    `${name} is "${text}"; allowed: a whole number from 1 to 65535, or 0 for any free port.`,
  );
}

/** @param {string} text */
function hostFrom(text) {
  // Left to the resolver, localhost may become ::1 alone, and 127.0.0.1 would then find nobody.
  if (text === 'localhost') return '127.0.0.1';
  return text.replace(/^\[(.*)\]$/, '$1');
}

/** The addresses under which others on the network can reach this computer. */
const networkAddresses = () =>
  Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
