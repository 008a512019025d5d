import { createServer } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  browserAddresses,
  listenComplaint,
  mustBeFree,
  readAddress,
} from '../../src/cli/address.mjs';

describe('the address to serve at', () => {
  test('is port 4173 of this computer only, when nothing is said', () => {
    expect(readAddress([], {})).toEqual({ host: '127.0.0.1', port: 4173 });
  });

  test('comes from the environment', () => {
    expect(readAddress([], { PORT: '8080', HOST: '0.0.0.0' })).toEqual({
      host: '0.0.0.0',
      port: 8080,
    });
  });

  test('comes from the options before the environment', () => {
    const words = ['--port', '9000', '--host=::1'];
    expect(readAddress(words, { PORT: '8080', HOST: '0.0.0.0' })).toEqual({
      host: '::1',
      port: 9000,
    });
  });

  test('takes an empty variable for none', () => {
    expect(readAddress([], { PORT: '', HOST: '' })).toEqual({ host: '127.0.0.1', port: 4173 });
  });

  test('takes localhost for the address that every browser tries', () => {
    expect(readAddress(['--host', 'localhost'], {}).host).toBe('127.0.0.1');
  });

  test.each(['65536', '-1', '80.5', 'http', ' ', '0x50', '1e3'])('has no port "%s"', (port) => {
    expect(() => readAddress([`--port=${port}`], {})).toThrow(
      `--port is "${port}"; allowed: a whole number from 1 to 65535`,
    );
    expect(() => readAddress([], { PORT: port })).toThrow(`PORT is "${port}"; allowed:`);
  });

  test.each([[['--prot', '80']], [['8080']], [['--port']]])(
    'refuses %j with the usage',
    (words) => {
      expect(() => readAddress(words, {})).toThrow('Usage: npm start -- [--port NUMBER]');
    },
  );
});

describe('the address to type into a browser', () => {
  test('is localhost where only this computer is served', () => {
    expect(browserAddresses({ host: '127.0.0.1', port: 4173 })).toEqual(['http://localhost:4173']);
  });

  test('begins with localhost where the whole network is served', () => {
    expect(browserAddresses({ host: '0.0.0.0', port: 80 })[0]).toBe('http://localhost:80');
  });

  test('brackets an IPv6 address', () => {
    expect(browserAddresses({ host: 'fe80::1', port: 80 })).toEqual(['http://[fe80::1]:80']);
  });
});

describe('an address where nothing can listen is refused in plain words', () => {
  const other = createServer();
  beforeAll(() => new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve)));
  afterAll(() => new Promise<void>((resolve) => other.close(() => resolve())));

  test('when another program has the port', async () => {
    const { port } = other.address() as { port: number };
    await expect(mustBeFree({ host: '127.0.0.1', port })).rejects.toThrow(
      `Port ${port} is taken, perhaps by another Knucklebook that still runs.\n` +
        `Stop that program, or choose another port: npm start -- --port ${port === 65535 ? 4173 : port + 1}`,
    );
  });

  test('when this computer has no such address', async () => {
    // 198.51.100.0/24 is set aside for documentation (RFC 5737).
    await expect(mustBeFree({ host: '198.51.100.77', port: 0 })).rejects.toThrow(
      'This computer has no address "198.51.100.77".',
    );
  });

  test('when the port is for administrators', () => {
    const refused = Object.assign(new Error('listen EACCES'), { code: 'EACCES' });
    expect(listenComplaint(refused, { host: '127.0.0.1', port: 80 }).message).toContain(
      'may not serve at port 80',
    );
  });

  test('and a free one is not', async () => {
    await expect(mustBeFree({ host: '127.0.0.1', port: 0 })).resolves.toBeUndefined();
  });
});
