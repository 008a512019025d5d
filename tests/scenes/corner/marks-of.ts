import { cornerScene, type CornerLook } from '#scenes/corner/corner-scene.ts';
import type { Mark } from '#scenes/marks.ts';
import type { View } from '#scenes/plane.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { modelNamed } from '../scene-arbitraries.ts';

export const lookIn = (view: View, look: Partial<CornerLook> = {}): CornerLook => ({
  view,
  closeness: 'whole',
  measures: [],
  names: [],
  handles: [],
  units: 'metric',
  ...look,
});

/** The marks of a corner's drawing: `marksOf('linnet, left', { spacer: 20 }, lookIn('front'))`. */
export const marksOf = (
  name: string,
  changes: Partial<Setting>,
  look: CornerLook,
): readonly Mark[] => cornerScene(modelNamed(name), adjusted(AS_IT_STANDS, changes), look).marks;

/** The mark of that key, which must be of that kind. */
export function markOf<Kind extends Mark['kind']>(
  marks: readonly Mark[],
  kind: Kind,
  key: string,
): Extract<Mark, { kind: Kind }> {
  const found = marks.find((mark) => mark.key === key);
  if (found?.kind === kind) return found as Extract<Mark, { kind: Kind }>;
  throw new Error(`there is no ${kind} ${key} among ${marks.map((mark) => mark.key).join(', ')}`);
}
