import { cpSync, mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { fingerprint } from '../../src/cli/sources.mjs';

describe('the fingerprint of the sources', () => {
  let folder = '';
  const write = (path: string, text: string) => {
    writeFileSync(join(folder, path), text);
  };
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'knucklebook-'));
    mkdirSync(join(folder, 'src/core'), { recursive: true });
    write('src/core/a.ts', 'a');
    write('package.json', '{}');
  });
  afterEach(() => {
    rmSync(folder, { recursive: true });
  });

  test('stays while nothing changes', () => {
    const before = fingerprint(folder);
    write('src/core/a.ts', 'a');
    expect(fingerprint(folder)).toBe(before);
  });

  test.each([
    ['a file deep down changes', () => write('src/core/a.ts', 'b')],
    ['a file comes', () => write('src/core/b.ts', '')],
    ['a file goes', () => rmSync(join(folder, 'src/core/a.ts'))],
    ['a file moves', () => renameSync(join(folder, 'src/core/a.ts'), join(folder, 'src/a.ts'))],
    ['a setting changes', () => write('package.json', '{ }')],
    [
      'a whole folder comes',
      () => cpSync(join(folder, 'src'), join(folder, 'lessons'), { recursive: true }),
    ],
  ])('changes when %s', (_, change) => {
    const before = fingerprint(folder);
    change();
    expect(fingerprint(folder)).not.toBe(before);
  });

  test('takes no notice of hidden files and of what is no source', () => {
    const before = fingerprint(folder);
    write('src/.hidden', '');
    write('README.md', '');
    expect(fingerprint(folder)).toBe(before);
  });
});
