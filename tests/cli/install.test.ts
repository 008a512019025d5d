import { describe, expect, test } from 'vitest';
import { firstDifference } from '../../src/cli/install.mjs';

const lockfile = (packages: Record<string, object>) => ({ packages });

const wanted = lockfile({
  '': { version: '0.1.0' },
  'node_modules/a': { version: '1.0.0', integrity: 'sha512-a' },
  'node_modules/a/node_modules/@b/c': { version: '2.0.0', integrity: 'sha512-c' },
  'node_modules/other-system': { version: '3.0.0', integrity: 'sha512-o', optional: true },
});

const { '': _, 'node_modules/other-system': __, ...here } = wanted.packages;

describe('packages are installed anew', () => {
  test('not when those of the lockfile are there, but for optional ones', () => {
    expect(firstDifference(wanted, lockfile(here))).toBeUndefined();
  });

  test('when one is missing', () => {
    const { 'node_modules/a/node_modules/@b/c': missing, ...rest } = here;
    expect(missing).toBeDefined();
    expect(firstDifference(wanted, lockfile(rest))).toBe('@b/c is missing');
  });

  test.each([
    { version: '1.0.1', integrity: 'sha512-a' },
    { version: '1.0.0', integrity: 'sha512-z' },
  ])('when one is another: %j', (other) => {
    expect(firstDifference(wanted, lockfile({ ...here, 'node_modules/a': other }))).toBe(
      'a is not the version of the lockfile',
    );
  });

  test('when one is no longer wanted', () => {
    const more = lockfile({ ...here, 'node_modules/d': { version: '1.0.0' } });
    expect(firstDifference(wanted, more)).toBe('d is no longer in the lockfile');
  });
});
