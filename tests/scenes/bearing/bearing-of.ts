import { bearingScene } from '#scenes/bearing/bearing-scene.ts';
import type { BearingLook } from '#scenes/bearing/bearing-look.ts';
import type { Mark } from '#scenes/marks.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { modelNamed } from '../scene-arbitraries.ts';

/** A look with nothing in it but what is asked for. */
export const bearingLook = (look: Partial<BearingLook> = {}): BearingLook => ({
  view: 'section',
  duty: 'straight',
  measures: [],
  named: false,
  handles: [],
  units: 'metric',
  guesses: {},
  ...look,
});

export const settingOf = (changes: Partial<Setting>): Setting => adjusted(AS_IT_STANDS, changes);

/** The marks of a corner's bearing. */
export const bearingOf = (
  name: string,
  changes: Partial<Setting>,
  look: Partial<BearingLook> = {},
): readonly Mark[] => bearingScene(modelNamed(name), settingOf(changes), bearingLook(look)).marks;
