import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const command = (script: string, ...words: string[]) => {
  const file = fileURLToPath(new URL(`../../src/cli/${script}`, import.meta.url));
  return spawnSync(process.execPath, [file, ...words], { encoding: 'utf8' });
};

test.each([
  ['start.mjs', ['--port', 'x'], '--port is "x"; allowed: a whole number from 1 to 65535'],
  ['start.mjs', ['--host', '198.51.100.77'], 'This computer has no address "198.51.100.77".'],
  ['start.mjs', ['--speed', '3'], "Unknown option '--speed'."],
  ['test.mjs', ['--only', 'unit,units'], 'There is no stage "units"; allowed: format, lint,'],
  ['build.mjs', ['--dynamic'], "Unknown option '--dynamic'."],
])('%s %j ends at once with a plain message and exit code 1', (script, words, message) => {
  const { status, stdout, stderr } = command(script, ...words);
  expect(stderr).toContain(message);
  expect(stderr).not.toMatch(/^\s+at /m);
  expect(stdout).toBe('');
  expect(status).toBe(1);
});
