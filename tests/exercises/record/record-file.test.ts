import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { faultLine, faultsOf } from '#core/fault.ts';
import { USUAL_SETTINGS } from '#exercises/practice/settings.ts';
import { inOrder, type Attempt } from '#exercises/record/attempt.ts';
import { readRecordFile, writeRecordFile } from '#exercises/record/record-file.ts';

const name = fc.stringMatching(/^[a-z0-9-]{1,40}$/);

const attempts: fc.Arbitrary<readonly Attempt[]> = fc.array(
  fc.record(
    {
      kind: name,
      version: fc.integer({ min: 1, max: 9 }),
      seed: name,
      at: fc.integer({ min: 1_600_000_000_000, max: 2_000_000_000_000 }),
      help: fc.integer({ min: 0, max: 5 }),
      firstTry: fc.boolean(),
      hints: fc.integer({ min: 0, max: 5 }),
      sure: fc.constantFrom(1, 2, 3),
      earned: fc.integer({ min: 0, max: 9 }),
      possible: fc.integer({ min: 1, max: 9 }),
    },
    { requiredKeys: ['kind', 'version', 'seed', 'at', 'help', 'firstTry', 'earned', 'possible'] },
  ),
);

const faultLines = (text: string): readonly string[] =>
  faultsOf(readRecordFile(text)).map(faultLine);

const ONE: Attempt = {
  kind: 'spacer-scrub',
  version: 1,
  seed: 'first',
  at: 1_700_000_000_000,
  help: 2,
  firstTry: true,
  earned: 2,
  possible: 2,
};

/** A file with one attempt, changed. */
const withChange = (change: object): string =>
  JSON.stringify({
    ...(JSON.parse(writeRecordFile([], {})) as object),
    attempts: [{ ...ONE, ...change }],
  });

/** A file without attempts and with settings, changed. */
const withSettings = (change: object): string =>
  JSON.stringify({
    ...(JSON.parse(writeRecordFile([], {})) as object),
    settings: { ...USUAL_SETTINGS, ...change },
  });

test('how the learner practises goes with it', () => {
  const settings = { ...USUAL_SETTINGS, horizon: '2027-06-30', lessons: { 'two-points': false } };
  const outcome = readRecordFile(writeRecordFile([ONE], {}, settings));
  expect(outcome).toMatchObject({ ok: true, value: { attempts: [ONE], settings } });
});

test('a record that is written is read as it was', () => {
  fc.assert(
    fc.property(
      attempts,
      fc.dictionary(name, fc.integer({ min: 1, max: 20 }), { noNullPrototype: true }),
      (list, read) => {
        const outcome = readRecordFile(writeRecordFile(list, read));
        expect(outcome).toMatchObject({ ok: true, value: { attempts: inOrder(list), read } });
      },
    ),
  );
});

test('the same record is written the same, in whatever order it was kept', () => {
  fc.assert(
    fc.property(attempts, (list) => {
      expect(writeRecordFile(list.toReversed(), {})).toBe(writeRecordFile(list, {}));
    }),
  );
});

describe('what is no record is told so at its place', () => {
  test.each<[string, string, string]>([
    ['', 'the whole document: is no JSON', 'saved on the practice page'],
    ['[]', 'the whole document: is an empty list', 'format, version, attempts, read, settings'],
    ['{}', 'format: is missing', '"knucklebook record"'],
    ['{"format":"knucklebook sheet"}', 'format: is the text "knucklebook sheet"', 'record'],
    [withChange({ at: 'now' }), 'attempts[0].at: is the text "now"', 'a whole number from'],
    [withChange({ at: 12 }), 'attempts[0].at: is 12', 'a whole number from'],
    [withChange({ seed: 'A b' }), 'attempts[0].seed: is the text "A b"', 'small letters'],
    [withChange({ sure: 4 }), 'attempts[0].sure: is 4', '1 to 3'],
    [withChange({ earned: -1 }), 'attempts[0].earned: is -1', '0 to 1000'],
    [withChange({ firsttry: true }), 'attempts[0].firsttry: is not known', 'did you mean firstTry'],
    [withSettings({ size: 7 }), 'settings.size: is 7', '3, 6, 10, 15'],
    [withSettings({ horizon: '2027-02-30' }), 'settings.horizon: is the text', 'a day up to'],
    [withSettings({ lessons: { x: 1 } }), 'settings.lessons: is an object', 'true or false'],
    [withChange({ kind: undefined }), 'attempts[0].kind: is missing', 'small letters'],
  ])('%s', (text, wrong, allowed) => {
    const [line = ''] = faultLines(text);
    expect(line).toContain(wrong);
    expect(line).toContain(allowed);
  });

  test('all faults at once', () => {
    expect(faultLines(withChange({ at: null, version: 0, help: 1.5 }))).toHaveLength(3);
  });

  test('whatever it is, without an exception', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(readRecordFile(text).ok).toBe(false);
      }),
    );
  });
});

test('kinds of another copy of the course are kept', () => {
  expect(readRecordFile(withChange({ kind: 'not-here-any-more' })).ok).toBe(true);
});
