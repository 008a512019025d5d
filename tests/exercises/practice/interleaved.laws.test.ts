import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { confusableWith } from '#exercises/practice/confusable.ts';
import { interleaved } from '#exercises/practice/interleaved.ts';
import { unusedSeed } from '#exercises/practice/unused-seed.ts';
import { KIND_IDS, loadKinds } from '#exercises/registry.ts';

const kinds = await loadKinds(KIND_IDS);

const some = fc.array(fc.constantFrom(...kinds.slice(0, 9)), { maxLength: 12 });
const different = fc.uniqueArray(fc.constantFrom(...kinds), { maxLength: 12 });

const runs = (ids: readonly string[]): number =>
  ids.filter((id, i) => i > 0 && ids[i - 1] === id).length;

describe('the order of a mix', () => {
  test('has everything that was chosen, once', () => {
    fc.assert(
      fc.property(some, (chosen) => {
        const sorted = (list: readonly { id: string }[]) => list.map(({ id }) => id).toSorted();
        expect(sorted(interleaved(chosen))).toEqual(sorted(chosen));
      }),
    );
  });

  test('has no kind twice running where that can be avoided', () => {
    fc.assert(
      fc.property(some, (chosen) => {
        const ids = interleaved(chosen).map(({ id }) => id);
        const counts = ids.map((id) => ids.filter((other) => other === id).length);
        const most = Math.max(0, ...counts);
        if (most <= Math.ceil(ids.length / 2)) expect(runs(ids)).toBe(0);
      }),
    );
  });

  test('puts what is taken for each other side by side', () => {
    fc.assert(
      fc.property(different, (chosen) => {
        const ids = interleaved(chosen).map(({ id }) => id);
        for (const [i, id] of ids.entries()) {
          // Of several that a kind is taken for, one can be missing beside it.
          const others = confusableWith(id).filter((other) => ids.includes(other));
          if (others.length === 0) continue;
          const beside = [ids[i - 1], ids[i + 1]];
          expect(others.some((other) => beside.includes(other))).toBe(true);
        }
      }),
    );
  });

  test('begins with the most urgent', () => {
    fc.assert(
      fc.property(different, (chosen) => {
        expect(interleaved(chosen)[0]).toBe(chosen[0]);
      }),
    );
  });
});

describe('a seed', () => {
  test('is never one that was met', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('a', 'b', 'c', 'd')),
        fc.infiniteStream(fc.constantFrom('a', 'b', 'c', 'd', 'e')),
        (used, stream) => {
          const seed = unusedSeed(() => String(stream.next().value), used);
          expect(used).not.toContain(seed);
        },
      ),
    );
  });

  test('is never one that pages give to everybody', () => {
    const draws = ['first', 'look-back', 'worked-example', 'abc'];
    expect(unusedSeed(() => draws.shift() ?? '', [])).toBe('abc');
  });

  test('is not waited for for ever', () => {
    expect(() => unusedSeed(() => 'a', ['a'])).toThrow('1000');
  });
});
