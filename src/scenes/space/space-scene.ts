import type { CornerModel } from '#core/car/car.ts';
import type { UnitSystem } from '#core/display.ts';
import type { QuantityId } from '#core/quantities.ts';
import { standing } from '../corner/standing.ts';
import type { Mark, Scene } from '../marks.ts';
import { isChanged, unchanged, type Setting } from '../setting.ts';
import { axisInSpace, carrierInSpace, spotsInSpace } from './carrier-in-space.ts';
import { spaceDescription } from './describe-space.ts';
import { forcesInSpace } from './forces-in-space.ts';
import { gridInSpace, leversInSpace } from './road-in-space.ts';
import { spaceWindow, stageOf, type Stage } from './stage.ts';
import type { Viewpoint } from './viewpoint.ts';
import { printInSpace, ringsInSpace, tyreInSpace } from './wheel-in-space.ts';

/** How a corner is looked at in space. */
export interface SpaceLook {
  readonly viewpoint: Viewpoint;
  readonly measures: readonly QuantityId[];
  readonly units: UnitSystem;
}

/** The drawing of a corner in space, from wherever the reader stands. */
export function spaceScene(model: CornerModel, setting: Setting, look: SpaceLook): Scene {
  const { viewpoint, measures, units } = look;
  // A loaded radius that grows is a taller tyre.
  const anatomy = { ...model.anatomy, tyreRadius: model.anatomy.tyreRadius + setting.radius };
  const now = standing(model, setting);
  const before = isChanged(setting) ? standing(model, unchanged(setting)) : undefined;
  const stage = stageOf(now, { anatomy }, viewpoint);
  return {
    title: `${model.corner.side === 'left' ? 'Left' : 'Right'} front corner in space`,
    description: spaceDescription(now, viewpoint, measures, units),
    window: spaceWindow(model, viewpoint),
    marks: [
      ...gridInSpace(stage, now),
      ...(before ? [tyreInSpace(stage, before, model.anatomy, true)] : []),
      tyreInSpace(stage, now, anatomy),
      ...printInSpace(stage, now, anatomy),
      ...ringsInSpace(stage, now, anatomy),
      ...carrierInSpace(stage, now),
      ...leversInSpace(stage, now, measures, units),
      ...axisInSpace(stage, now),
      ...spotsInSpace(stage, now),
      ...forcesInSpace(stage, now, units),
      ...namesInSpace(stage, now),
    ],
  };
}

/** The names that a turned drawing needs to be found in again. */
const namesInSpace = (
  { onto }: Stage,
  { corner, geometry }: ReturnType<typeof standing>,
): Mark[] => {
  const name = (
    key: string,
    role: 'axis' | 'wheel',
    at: Parameters<Stage['onto']>[0],
    text: string,
  ) => ({ kind: 'label', key: `name-${key}`, role, at: onto(at), text }) as const;
  return [
    name('axis', 'axis', corner.pivots.upper, 'steering axis'),
    name('ground', 'axis', geometry.groundPoint, 'axis at the road'),
    name('contact', 'wheel', geometry.contactCentre, 'contact centre'),
  ];
};
