import { rounded } from './frame.ts';
import type { PathShape, TextShape } from './shapes.ts';

/** A path on paper that belongs to no mark: an axis of a chart, a gauge. */
export const plainPath = (
  key: string,
  role: PathShape['role'],
  line: PathShape['line'],
  d: string,
  filled = false,
): PathShape => ({ kind: 'path', key, role, line, d, filled, quantity: undefined, before: false });

/** Words on paper that belong to no mark, centred on (x, y). */
export const plainText = (
  key: string,
  text: string,
  x: number,
  y: number,
  strong = false,
): TextShape => ({
  kind: 'text',
  key,
  role: 'guide',
  quantity: undefined,
  before: false,
  text,
  x: rounded(x),
  y: rounded(y),
  strong,
});
