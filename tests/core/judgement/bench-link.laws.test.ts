import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { benchFragment, benchIn, hasBench } from '#core/judgement/bench-link.ts';
import { BENCH_WORDS } from '#core/judgement/bench-words.ts';
import { packed, unpacked } from '#core/judgement/packed-json.ts';
import { GARAGE_FILES, garageBench } from '../../garage-benches.ts';
import { waysInto } from '../document/edit.ts';

describe('packed JSON', () => {
  test('comes back as it was, whatever it is', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), fc.array(fc.string()), (value, words) => {
        // −0 is written as 0 in JSON too.
        const plain: unknown = JSON.parse(JSON.stringify(value));
        expect(unpacked(packed(plain, words), words)).toEqual(plain);
      }),
      { numRuns: 500 },
    );
  });

  test('keeps numbers to the last digit', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
        expect(unpacked(packed(number, []), [])).toBe(number + 0);
      }),
      { numRuns: 1000 },
    );
  });

  test('has room for more words than bytes', () => {
    const words = Array.from({ length: 400 }, (_, i) => `word ${i}`);
    expect(unpacked(packed(words, words), words)).toEqual(words);
  });

  test('is read without harm from any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        try {
          unpacked(bytes, BENCH_WORDS);
        } catch (error) {
          expect(error instanceof RangeError || error instanceof TypeError).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
  });
});

describe.each(Array.from(GARAGE_FILES.keys()))('the link of %s', (id) => {
  const bench = garageBench(id);
  const fragment = benchFragment(bench);

  test('has the whole bench in it', () => {
    expect(benchIn(`https://example.org/bench#${fragment}`)).toEqual({ ok: true, value: bench });
    expect(hasBench(`#${fragment}`)).toBe(true);
  });

  test('is half as long as its JSON, or shorter', () => {
    expect(fragment.length).toBeLessThan(JSON.stringify(bench).length / 2);
  });

  test('that was cut off or mistyped is no bench', () => {
    for (let length = 1; length < fragment.length; length += 7)
      expect(benchIn(fragment.slice(0, length)).ok).toBe(false);
    for (let at = 8; at < fragment.length; at += 11) {
      const other = fragment[at] === 'x' ? 'y' : 'x';
      const mistyped = fragment.slice(0, at) + other + fragment.slice(at + 1);
      const read = benchIn(mistyped);
      // The last sign may have bits that stand for nothing.
      if (at < fragment.length - 1) expect(read.ok).toBe(false);
    }
  });

  test('names every key by its number', () => {
    const keys = waysInto(bench)
      .map((way) => way.at(-1))
      .filter((key) => typeof key === 'string');
    expect(keys.filter((key) => !BENCH_WORDS.includes(key))).toEqual([]);
  });
});

test('a bench’s file is read too', () => {
  const bench = garageBench('by-eye');
  expect(benchIn(`\uFEFF${JSON.stringify(bench, null, 2)}\n`)).toEqual({ ok: true, value: bench });
});
