import { bodiesScene } from '#scenes/bodies/bodies-scene.ts';
import type { BodiesLook } from '#scenes/bodies/bodies-look.ts';
import type { BodiesCase } from '#scenes/bodies/cases.ts';
import { standing } from '#scenes/corner/standing.ts';
import type { Mark } from '#scenes/marks.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { modelNamed } from '../scene-arbitraries.ts';

/** The loads that the cases are tried with, in newtons. */
export const LOADED: Readonly<Record<BodiesCase, Partial<Setting>>> = {
  brake: { brake: 2500 },
  shaft: { drive: 1500 },
  edge: { blow: 4000 },
  rolling: { drag: 80 },
};

export const settingOf = (changes: Partial<Setting>): Setting => adjusted(AS_IT_STANDS, changes);

export const apartIn = (which: BodiesCase, look: Partial<BodiesLook> = {}): BodiesLook => ({
  which,
  apart: 1,
  units: 'metric',
  ...look,
});

export const cornerOf = (name: string, changes: Partial<Setting>) =>
  standing(modelNamed(name), settingOf(changes)).corner;

/** The marks of a case: `bodiesOf('linnet, left', apartIn('brake'))`. */
export const bodiesOf = (
  name: string,
  look: BodiesLook,
  changes = LOADED[look.which],
): readonly Mark[] => bodiesScene(modelNamed(name), settingOf(changes), look).marks;
