import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  canRedo,
  canUndo,
  historyOf,
  stepped,
  type History,
  type HistoryStep,
} from '#core/judgement/bench-history.ts';

const steps = fc.array(
  fc.oneof(
    fc.record({ kind: fc.constant('do' as const), state: fc.integer() }),
    fc.constantFrom<HistoryStep<number>>({ kind: 'undo' }, { kind: 'redo' }),
  ),
  { maxLength: 60 },
);

const after = (history: History<number>, list: readonly HistoryStep<number>[]): History<number> =>
  list.reduce(stepped, history);

describe('a history', () => {
  test('comes back to its beginning by undoing, and to its end by doing again', () => {
    fc.assert(
      fc.property(steps, (list) => {
        const history = after(historyOf(0), list);
        let back = history;
        while (canUndo(back)) back = stepped(back, { kind: 'undo' });
        expect(back.present).toBe(0);
        let forth = back;
        for (const _ of history.past) forth = stepped(forth, { kind: 'redo' });
        expect(forth.present).toBe(history.present);
      }),
    );
  });

  test('forgets what was undone once something else is done', () => {
    fc.assert(
      fc.property(steps, fc.integer(), (list, state) => {
        const history = after(historyOf(0), list);
        if (state === history.present) return;
        const done = stepped(history, { kind: 'do', state });
        expect(canRedo(done)).toBe(false);
        expect(stepped(done, { kind: 'undo' }).present).toBe(history.present);
      }),
    );
  });

  test('takes back a whole gesture at once', () => {
    const slid = after(historyOf(0), [
      { kind: 'do', state: 1, gesture: 'spacer' },
      { kind: 'do', state: 2, gesture: 'spacer' },
      { kind: 'do', state: 3, gesture: 'spacer' },
    ]);
    expect(stepped(slid, { kind: 'undo' }).present).toBe(0);
  });

  test('tells two gestures apart, by their names or by a pause', () => {
    const two = after(historyOf(0), [
      { kind: 'do', state: 1, gesture: 'spacer' },
      { kind: 'settle' },
      { kind: 'do', state: 2, gesture: 'spacer' },
      { kind: 'do', state: 3, gesture: 'inset' },
    ]);
    expect(two.past).toEqual([0, 1, 2]);
  });

  test('does nothing at its ends, nor where nothing changes', () => {
    const history = historyOf(0);
    expect(stepped(history, { kind: 'undo' })).toBe(history);
    expect(stepped(history, { kind: 'redo' })).toBe(history);
    expect(stepped(history, { kind: 'do', state: 0 })).toBe(history);
  });
});
