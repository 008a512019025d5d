import { describe, expect, test } from 'vitest';
import type { Exercise } from '#exercises/exercise.ts';
import { markItem } from '#exercises/sheet/mark-item.ts';
import { rightEntries, rightWork, SHEET, typedAs, variant } from './a-sheet.ts';

const [plainItem, hintItem] = SHEET.items;
const [spacer, rod] = variant(5);
if (!plainItem || !hintItem || !spacer || !rod) throw new Error('two items');

const verdicts = (item: ReturnType<typeof markItem>) =>
  item.counted.parts.map(({ verdict }) => verdict);

/** A slip in the first part, and the right method on it from there. */
function carried({ parts }: Exercise) {
  const [first, second] = parts;
  if (!first || !second) throw new Error('two parts');
  const wrong = first.slips()[0]?.value ?? NaN;
  return [typedAs(first, wrong), typedAs(second, second.follow([wrong]))];
}

describe('an exercise of a sheet', () => {
  test('earns its marks, shared out among its parts', () => {
    const marked = markItem(plainItem, spacer, rightWork(spacer));
    expect(marked.counted.parts.map(({ earned }) => earned)).toEqual([2, 2]);
    expect([marked.earned, marked.possible]).toEqual([4, 4]);
  });

  test('loses the marks of the step that is wrong, once', () => {
    const marked = markItem(plainItem, spacer, { attempts: [carried(spacer)], hints: [] });
    expect(verdicts(marked)).toEqual(['slip', 'follow-on']);
    expect(marked.counted.parts[0]?.slip?.id).toBe(spacer.parts[0]?.slips()[0]?.id);
    expect(marked.earned).toBe(2);
  });

  test('loses the stated share of a part whose hint was looked at', () => {
    const marked = markItem(hintItem, rod, { ...rightWork(rod), hints: [0] });
    expect(marked.counted.parts.map(({ earned, hinted }) => [earned, hinted])).toEqual([
      [1.5, true],
      ...rod.parts.slice(1).map(() => [3, false]),
    ]);
  });

  test('counts its best attempt, the earliest of equals', () => {
    const wrong = rod.parts.map(() => ({ text: '0' }));
    const attempts = [wrong, rightEntries(rod), rightEntries(rod)];
    const marked = markItem(hintItem, rod, { attempts, hints: [] });
    expect(marked.counted).toBe(marked.attempts[1]);
    expect(marked.earned).toBe(6);
  });

  test('that nobody touched earns nothing, and says that nothing stands there', () => {
    const marked = markItem(plainItem, spacer, { attempts: [], hints: [] });
    expect(verdicts(marked)).toEqual(['missing', 'missing']);
    expect(marked.earned).toBe(0);
  });

  test('tells what cannot be read from what is missing', () => {
    const attempts = [[{ text: '4 bananas' }, { text: '' }]];
    expect(verdicts(markItem(plainItem, spacer, { attempts, hints: [] }))).toEqual([
      'unreadable',
      'missing',
    ]);
  });
});
