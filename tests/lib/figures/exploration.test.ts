import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { valueOf } from '#scenes/corner/standing.ts';
import { adjusted, AS_IT_STANDS } from '#scenes/setting.ts';
import { Exploration } from '../../../src/lib/figures/exploration.svelte.ts';
import { trainingCar } from '../../training-cars.ts';

const SPACED = adjusted(AS_IT_STANDS, { spacer: 20 });

const explored = (): Exploration => new Exploration(trainingCar('siskin').left);

describe('an exploration', () => {
  test('begins with the car as it stands, with nothing to undo', () => {
    const exploration = explored();
    expect(exploration.setting).toEqual(AS_IT_STANDS);
    expect([exploration.canUndo, exploration.changed]).toEqual([false, false]);
  });

  test('shows a changed car beside the car as it stands', () => {
    const exploration = explored();
    exploration.change({ spacer: 20 });
    const [now, before] = [exploration.now, exploration.before].map((standing) =>
      valueOf('spindleOffset', standing),
    );
    expect(exploration.changed).toBe(true);
    expect((now ?? 0) - (before ?? 0)).toBeCloseTo(0.02, 4);
  });

  test('compares with the car steered as it is: steering is no change', () => {
    const exploration = explored();
    exploration.change({ steer: 15 });
    expect(exploration.changed).toBe(false);
    expect(exploration.before).toEqual(exploration.now);
  });

  test('keeps every parameter in its bounds, and within them as it was typed', () => {
    const exploration = explored();
    exploration.change({ spacer: 1000, camberAtTop: -0.44 });
    expect(exploration.setting).toMatchObject({ spacer: 60, camberAtTop: -0.44 });
  });
});

describe('undo', () => {
  test('takes back one change after the other, down to the car as it stands', () => {
    const exploration = explored();
    exploration.change({ spacer: 10 });
    exploration.change({ spacer: 20 });
    exploration.undo();
    expect(exploration.setting.spacer).toBe(10);
    exploration.undo();
    expect(exploration.setting).toEqual(AS_IT_STANDS);
    expect(exploration.canUndo).toBe(false);
    exploration.undo();
    expect(exploration.setting).toEqual(AS_IT_STANDS);
  });

  test('takes back a whole drag, however many values it went through', () => {
    const exploration = explored();
    exploration.remember();
    for (const spacer of [1, 2, 3, 4]) exploration.adjust({ spacer });
    exploration.settle();
    exploration.undo();
    expect(exploration.setting.spacer).toBe(0);
  });

  test('has nothing to take back from a change that changed nothing', () => {
    const exploration = explored();
    exploration.change({ spacer: 0 });
    exploration.remember();
    exploration.adjust({ spacer: 5 });
    exploration.adjust({ spacer: 0 });
    exploration.settle();
    expect(exploration.canUndo).toBe(false);
  });

  test('remembers the last hundred changes', () => {
    const exploration = explored();
    for (let i = 1; i <= 130; i++) exploration.change({ spacer: i % 2 });
    let undone = 0;
    while (exploration.canUndo) {
      exploration.undo();
      undone += 1;
    }
    expect(undone).toBe(100);
  });
});

describe('reset', () => {
  test('goes back to the car as it stands, and can be undone', () => {
    const exploration = explored();
    exploration.change({ spacer: 20, steer: 10 });
    exploration.reset();
    expect(exploration.setting).toEqual(AS_IT_STANDS);
    exploration.undo();
    expect(exploration.setting).toMatchObject({ spacer: 20, steer: 10 });
  });

  test('goes back to a beginning with a load where the figure had one', () => {
    const exploration = explored();
    const start = adjusted(AS_IT_STANDS, { weight: 4150 });
    exploration.place(start);
    exploration.change({ spacer: 20, weight: 2000 });
    exploration.reset(start);
    expect(exploration.setting).toEqual(start);
  });

  test('of a car as it stands leaves nothing to undo', () => {
    const exploration = explored();
    exploration.reset();
    expect(exploration.canUndo).toBe(false);
  });
});

describe('a parameter that waits for a prediction', () => {
  test('stays where it is, whatever moves the others', () => {
    const exploration = explored();
    exploration.change({ spacer: 5, steer: 10 });
    exploration.locked = ['spacer'];
    exploration.change({ spacer: 20, steer: 20 });
    expect(exploration.setting).toMatchObject({ spacer: 5, steer: 20 });
    exploration.reset();
    expect(exploration.setting).toMatchObject({ spacer: 5, steer: 0 });
    for (let i = 0; i < 3; i++) exploration.undo();
    expect(exploration.setting).toMatchObject({ spacer: 5, steer: 0 });
  });

  test('is moved all the same by the beginning of a step', () => {
    const exploration = explored();
    exploration.locked = ['spacer'];
    exploration.place(SPACED);
    expect(exploration.setting).toEqual(SPACED);
  });
});

describe('a glide', () => {
  /** The frames that wait to be drawn; times in milliseconds from the start. */
  let waiting: Map<number, FrameRequestCallback>;

  beforeEach(() => {
    waiting = new Map();
    vi.spyOn(performance, 'now').mockReturnValue(0);
    vi.stubGlobal('requestAnimationFrame', (callback: FrameRequestCallback) => {
      const id = waiting.size + 1;
      waiting.set(id, callback);
      return id;
    });
    vi.stubGlobal('cancelAnimationFrame', (id: number) => waiting.delete(id));
  });

  afterEach(() => {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
  });

  function frame(time: number): void {
    const callbacks = [...waiting.values()];
    waiting.clear();
    for (const callback of callbacks) callback(time);
  }

  test('passes the middle at half time and ends exactly where it leads', () => {
    const exploration = explored();
    exploration.glide(SPACED, false);
    expect(exploration.setting).toEqual(AS_IT_STANDS);
    frame(350);
    expect(exploration.setting.spacer).toBeCloseTo(10, 9);
    frame(5000);
    expect(exploration.setting).toEqual(SPACED);
    expect(waiting.size).toBe(0);
  });

  test('is a jump where motion is not wanted', () => {
    const exploration = explored();
    exploration.glide(SPACED, true);
    expect(exploration.setting).toEqual(SPACED);
    expect(waiting.size).toBe(0);
  });

  test('is undone as one change, in flight too', () => {
    const exploration = explored();
    exploration.glide(SPACED, false);
    frame(200);
    exploration.undo();
    expect(exploration.setting).toEqual(AS_IT_STANDS);
    expect([exploration.canUndo, waiting.size]).toEqual([false, 0]);
  });

  test('is over at once when the reader takes hold of something', () => {
    const exploration = explored();
    exploration.glide(SPACED, false);
    frame(200);
    exploration.change({ steer: 10 });
    expect(exploration.setting).toEqual({ ...SPACED, steer: 10 });
    expect(waiting.size).toBe(0);
    exploration.undo();
    expect(exploration.setting).toEqual(SPACED);
  });
});

describe('a change is compared with the car as it stands', () => {
  const changed = (): Exploration => {
    const exploration = explored();
    exploration.change({ spacer: 20, inset: -10, brake: 3000 });
    return exploration;
  };

  test('by showing any share of it, with the loads left as they are', () => {
    const exploration = changed();
    expect([exploration.share, exploration.compared]).toEqual([1, true]);
    exploration.showPart(0.25);
    expect(exploration.setting).toMatchObject({ spacer: 5, inset: -2.5, brake: 3000 });
    expect(exploration.share).toBe(0.25);
    exploration.showPart(0);
    expect(exploration.setting).toEqual(adjusted(AS_IT_STANDS, { brake: 3000 }));
    expect([exploration.changed, exploration.compared]).toEqual([false, true]);
    exploration.showPart(1);
    expect(exploration.setting).toMatchObject({ spacer: 20, inset: -10 });
  });

  test('by flipping to and fro', () => {
    const exploration = changed();
    exploration.flip(true);
    expect([exploration.share, exploration.setting.spacer]).toEqual([0, 0]);
    exploration.flip(true);
    expect([exploration.share, exploration.setting.spacer]).toEqual([1, 20]);
  });

  test('and a load set while the car as it stands is shown does not lose the change', () => {
    const exploration = changed();
    exploration.flip(true);
    exploration.change({ brake: 5000 });
    expect(exploration.compared).toBe(true);
    exploration.flip(true);
    expect(exploration.setting).toMatchObject({ spacer: 20, inset: -10, brake: 5000 });
  });

  test('until something else is changed: that is a whole of its own', () => {
    const exploration = changed();
    exploration.showPart(0.5);
    exploration.change({ spacer: 12 });
    expect(exploration.share).toBe(1);
    exploration.flip(true);
    exploration.flip(true);
    expect(exploration.setting).toMatchObject({ spacer: 12, inset: -5 });
  });

  test('until a step begins, or everything is set back', () => {
    for (const end of [
      (exploration: Exploration) => {
        exploration.place(AS_IT_STANDS);
      },
      (exploration: Exploration) => {
        exploration.reset();
      },
    ]) {
      const exploration = changed();
      exploration.flip(true);
      end(exploration);
      expect(exploration.compared).toBe(false);
    }
  });

  test('and a flip can be undone like any change', () => {
    const exploration = changed();
    exploration.flip(true);
    exploration.undo();
    expect([exploration.share, exploration.setting.spacer]).toEqual([1, 20]);
  });

  test('and without a change there is nothing to compare', () => {
    const exploration = explored();
    exploration.change({ brake: 3000, steer: 10 });
    expect(exploration.compared).toBe(false);
  });
});
