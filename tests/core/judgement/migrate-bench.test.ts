import { expect, test } from 'vitest';
import { migrated, type Step } from '#core/judgement/migrate-bench.ts';

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
