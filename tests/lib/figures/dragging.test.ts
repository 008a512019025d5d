import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { handleFor } from '#scenes/corner/handles.ts';
import { windowOf } from '#scenes/corner/windows.ts';
import { frameOf, onPaper } from '#scenes/paper/frame.ts';
import type { Grip } from '#scenes/paper/shapes.ts';
import type { ParameterId } from '#scenes/parameters.ts';
import { Dragging } from '../../../src/lib/figures/dragging.svelte.ts';
import { Exploration } from '../../../src/lib/figures/exploration.svelte.ts';
import { trainingCar } from '../../training-cars.ts';

const SKETCH = { view: 'front', side: 'left' } as const;

/** A paper that is shown at twice its size: a place on it is half of where the pointer is. */
class Point {
  readonly x: number;
  readonly y: number;
  constructor(x: number, y: number) {
    this.x = x;
    this.y = y;
  }
  matrixTransform = (): Point => new Point(this.x / 2, this.y / 2);
}
const SHEET = { getScreenCTM: () => ({ inverse: () => ({}) }) } as unknown as SVGSVGElement;

beforeEach(() => vi.stubGlobal('DOMPoint', Point));
afterEach(() => vi.unstubAllGlobals());

function setUp(id: ParameterId) {
  const exploration = new Exploration(trainingCar('linnet').left);
  const frame = frameOf(windowOf(exploration.model, 'front', 'whole'));
  const handle = handleFor(id, SKETCH, exploration.now, 'whole');
  if (!handle) throw new Error(`${id} has no handle in the front view`);
  const { x, y } = onPaper(frame, handle.at);
  const grip: Grip = { key: handle.key, x, y, handle };
  return { exploration, frame, grip, dragging: new Dragging(exploration) };
}

const pointer = (x: number, y: number, { button = 0, pointerId = 7 } = {}): PointerEvent =>
  ({
    clientX: x,
    clientY: y,
    button,
    pointerId,
    preventDefault: vi.fn(),
    currentTarget: { setPointerCapture: vi.fn() },
  }) as unknown as PointerEvent;

const key = (name: string, preventDefault = vi.fn()): KeyboardEvent =>
  ({ key: name, preventDefault }) as unknown as KeyboardEvent;

describe('a grip', () => {
  test('goes with the pointer: 10 mm of the car outboard are 10 mm of the parameter', () => {
    const { exploration, frame, grip, dragging } = setUp('lowerOutboard');
    dragging.grab(pointer(300, 200), grip, frame, SHEET);
    // Two pixels for each unit of paper, and so many of those for a millimetre.
    dragging.move(pointer(300 + 2 * 10 * frame.scale, 200), SKETCH);
    expect(exploration.setting.lowerOutboard).toBe(10);
  });

  test('does not jump when it is taken beside its middle', () => {
    const { exploration, frame, grip, dragging } = setUp('lowerOutboard');
    dragging.grab(pointer(2 * grip.x + 15, 2 * grip.y - 9), grip, frame, SHEET);
    dragging.move(pointer(2 * grip.x + 15, 2 * grip.y - 9), SKETCH);
    expect(exploration.setting.lowerOutboard).toBe(0);
  });

  test('comes back in one step, and leaves nothing to undo when it was put back', () => {
    const { exploration, frame, grip, dragging } = setUp('lowerOutboard');
    dragging.grab(pointer(300, 200), grip, frame, SHEET);
    for (const x of [310, 330, 350]) dragging.move(pointer(x, 200), SKETCH);
    dragging.release();
    expect(exploration.setting.lowerOutboard).toBeGreaterThan(0);
    exploration.undo();
    expect(exploration.setting.lowerOutboard).toBe(0);
    dragging.grab(pointer(300, 200), grip, frame, SHEET);
    dragging.move(pointer(350, 200), SKETCH);
    dragging.move(pointer(300, 200), SKETCH);
    dragging.release();
    expect(exploration.canUndo).toBe(false);
  });

  test('stays when another finger moves, when it was let go, and under the second button', () => {
    const { exploration, frame, grip, dragging } = setUp('lowerOutboard');
    dragging.grab(pointer(300, 200, { button: 2 }), grip, frame, SHEET);
    dragging.move(pointer(380, 200), SKETCH);
    dragging.grab(pointer(300, 200), grip, frame, SHEET);
    dragging.move(pointer(380, 200, { pointerId: 8 }), SKETCH);
    dragging.release();
    dragging.move(pointer(380, 200), SKETCH);
    expect(exploration.setting.lowerOutboard).toBe(0);
  });
});

describe('the keys on a grip', () => {
  test.each([
    ['ArrowRight', 1],
    ['ArrowLeft', -1],
    ['ArrowUp', 1],
    ['ArrowDown', -1],
    ['PageUp', 10],
    ['PageDown', -10],
    ['Home', -40],
    ['End', 40],
  ])('%s takes the parameter to %s', (name, expected) => {
    const { exploration, grip, dragging } = setUp('lowerOutboard');
    const kept = vi.fn();
    dragging.key(key(name, kept), grip.handle, 1);
    expect(exploration.setting.lowerOutboard).toBe(expected);
    expect(kept).toHaveBeenCalledOnce();
  });

  test('go the way of the drawing: right is inboard where the parameter grows to the left', () => {
    const { exploration, grip, dragging } = setUp('lowerOutboard');
    dragging.key(key('ArrowRight'), grip.handle, -1);
    expect(exploration.setting.lowerOutboard).toBe(-1);
  });

  test('come back by Escape to where they began, and can be undone in one step', () => {
    const { exploration, grip, dragging } = setUp('lowerOutboard');
    for (const name of ['End', 'ArrowDown', 'Escape']) dragging.key(key(name), grip.handle, 1);
    expect(exploration.setting.lowerOutboard).toBe(0);
    for (const name of ['ArrowUp', 'PageUp']) dragging.key(key(name), grip.handle, 1);
    dragging.leave();
    exploration.undo();
    expect(exploration.setting.lowerOutboard).toBe(0);
    expect(exploration.canUndo).toBe(false);
  });

  test('leave other keys to the page', () => {
    const { exploration, grip, dragging } = setUp('lowerOutboard');
    for (const name of ['Tab', 'a', 'Enter', 'Escape']) {
      const kept = vi.fn();
      dragging.key(key(name, kept), grip.handle, 1);
      expect(kept).not.toHaveBeenCalled();
    }
    expect(exploration.canUndo).toBe(false);
  });
});
