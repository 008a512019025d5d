import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { frozenRow, frozenUrl, FROZEN_SEEDS, type Frozen } from './frozen.ts';
import { registered } from './every-kind.ts';

/**
 * No proof of anything: these are our own numbers. They see to it that a seed, once handed out, gives the same
 * exercise and the same marks for ever. A kind that has to change gets a new version, frozen beside the old one
 * by `node tests/exercises/freeze.ts`.
 */
describe.each(registered)('$id, version $version', (kind) => {
  const frozen = JSON.parse(readFileSync(frozenUrl(kind), 'utf8')) as Frozen;

  test('gives what it has always given', () => {
    expect(frozen).toMatchObject({ kind: kind.id, version: kind.version });
    expect(FROZEN_SEEDS.map((seed) => frozenRow(kind.exercise(seed)))).toEqual(frozen.rows);
  });
});

test('nothing is frozen that is not a kind', () => {
  const ids = readdirSync(new URL('./frozen/', import.meta.url)).map((file) =>
    file.replace(/\.v\d+\.json$/, ''),
  );
  expect(new Set(ids)).toEqual(new Set(registered.map(({ id }) => id)));
});
