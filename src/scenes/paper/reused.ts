import type { Drawing } from './drawn.ts';
import type { Shape } from './shapes.ts';

/**
 * A drawing in which every shape that looks as it did before is the very same object: whoever paints it then
 * sees at a glance what has moved.
 */
export function reused(previous: Drawing | undefined, next: Drawing): Drawing {
  if (!previous) return next;
  const known = new Map(previous.shapes.map((shape) => [shape.key, shape]));
  return {
    ...next,
    shapes: next.shapes.map((shape) => {
      const before = known.get(shape.key);
      return before && looksTheSame(before, shape) ? before : shape;
    }),
  };
}

function looksTheSame(a: Shape, b: Shape): boolean {
  if (a.role !== b.role || a.before !== b.before || a.quantity !== b.quantity) return false;
  if (a.kind === 'path' && b.kind === 'path') {
    return a.d === b.d && a.line === b.line && a.filled === b.filled;
  }
  return (
    a.kind === 'text' &&
    b.kind === 'text' &&
    a.x === b.x &&
    a.y === b.y &&
    a.text === b.text &&
    a.strong === b.strong
  );
}
