// node tests/exercises/freeze.ts: freezes what new kinds and new versions give. It never touches what is frozen.

import { existsSync, writeFileSync } from 'node:fs';
import { loadKinds } from '#exercises/registry.ts';
import { frozenRow, frozenUrl, FROZEN_SEEDS } from './frozen.ts';

const NOTE =
  'No proof of anything: what the seeds of this version give, kept so that they give it for ever. ' +
  'A published version never changes; a kind that has to change gets a new version and a new file.';

for (const kind of await loadKinds()) {
  const url = frozenUrl(kind);
  if (existsSync(url)) continue;
  const { id, version } = kind;
  const rows = FROZEN_SEEDS.map((seed) => frozenRow(kind.exercise(seed)));
  writeFileSync(url, `${JSON.stringify({ note: NOTE, kind: id, version, rows }, null, 2)}\n`);
  console.log(`frozen: ${id}, version ${version}`);
}
