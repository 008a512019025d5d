import { describe, expect, test } from 'vitest';
import { BENCH_VERSION } from '#core/judgement/bench-document.ts';
import { migrated, type Step } from '#core/judgement/migrate-bench.ts';
import { readBench } from '#core/judgement/read-bench.ts';
import { GARAGE_FILES } from '../../garage-benches.ts';
import { edited } from '../document/edit.ts';

const steps: readonly Step[] = [
  ({ name, ...rest }) => ({ ...rest, title: name }),
  (document) => ({ ...document, colour: 'green' }),
];

test('an old document goes through every step that came after it, and has the newest version', () => {
  expect(migrated({ version: 1, name: 'a' }, steps)).toEqual({
    ok: true,
    value: { version: 3, title: 'a', colour: 'green' },
  });
  expect(migrated({ version: 2, title: 'a' }, steps)).toEqual({
    ok: true,
    value: { version: 3, title: 'a', colour: 'green' },
  });
});

test('a document of the newest version stays as it is', () => {
  const document = { version: 3, title: 'a' };
  expect(migrated(document, steps)).toEqual({ ok: true, value: document });
});

test.each([undefined, 0, 1.5, '1', 4])('there is no version %s', (version) => {
  expect(migrated({ version }, steps).ok).toBe(false);
});

test.each([null, 3, [], 'text'])('%j is left to the reader', (value) => {
  expect(migrated(value, steps)).toEqual({ ok: true, value });
});

describe('a file of version 1', () => {
  const old = [...GARAGE_FILES].filter(([, file]) => versionOf(file) === 1);

  test('is what most scenarios are', () => {
    expect(old.length).toBeGreaterThan(9);
  });

  test.each(old)('opens with every number as it was: %s', (_, file) => {
    expect(readBench(file)).toEqual({
      ok: true,
      value: { ...(file as object), version: BENCH_VERSION },
    });
  });
});

test('a file of version 2 says by how much left and right differ', () => {
  const file = GARAGE_FILES.get('left-and-right-differ');
  expect(versionOf(file)).toBe(2);
  expect(readBench(file)).toEqual({ ok: true, value: file });
  const far = edited(file, { 'car.values.crossCaster_deg.value': 15 });
  expect(readBench(far)).toMatchObject({
    faults: [
      { path: 'car.values.crossCaster_deg.value', allowed: 'a number from -10 to 10 degrees' },
    ],
  });
});

const versionOf = (file: unknown): unknown => (file as { readonly version: unknown }).version;
