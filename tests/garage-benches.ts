import { readdirSync, readFileSync } from 'node:fs';
import type { BenchDocument } from '#core/judgement/bench-document.ts';
import { readBench } from '#core/judgement/read-bench.ts';
import { setUpBench, type BenchSetup } from '#core/judgement/bench-setup.ts';
import { faultLine } from '#core/fault.ts';

const FOLDER = new URL('../seeds/garage/', import.meta.url);

/** The garage scenarios’ files by name, parsed and not yet read. */
export const GARAGE_FILES: ReadonlyMap<string, unknown> = new Map(
  readdirSync(FOLDER).map((name) => [
    name.replace('.json', ''),
    JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8')) as unknown,
  ]),
);

export function garageBench(id: string): BenchDocument {
  const read = readBench(GARAGE_FILES.get(id));
  if (read.ok) return read.value;
  throw new Error(`${id}:\n${read.faults.map(faultLine).join('\n')}`);
}

export function garageSetup(id: string): BenchSetup {
  const setup = setUpBench(garageBench(id));
  if (setup.ok) return setup.value;
  throw new Error(`${id}:\n${setup.faults.map(faultLine).join('\n')}`);
}
