import type { CornerModel } from '#core/car/car.ts';
import type { UnitSystem } from '#core/display.ts';
import type { QuantityId } from '#core/quantities.ts';
import type { Mark, Scene } from '../marks.ts';
import type { ParameterId } from '../parameters.ts';
import { isChanged, unchanged, type Setting } from '../setting.ts';
import { standing } from '../corner/standing.ts';
import '../values/axle.ts';
import type { AxleCase } from './axle-cases.ts';
import { axleDescription } from './describe-axle.ts';
import { alongForce, sideForce, sideName, type SidePlace } from './axle-forces.ts';
import { axleHandle } from './axle-handles.ts';
import { axleUnit, axleWindow } from './axle-paper.ts';
import { axleStanding } from './axle-standing.ts';
import { cornerBody, cornerBefore, rackBody } from './axle-body.ts';
import { momentMarks, tileBefore } from './moment-tile.ts';
import { rackForces } from './rack-forces.ts';
import { scaleNote, yawMarks } from './yaw-marks.ts';

/** What a figure of an axle is asked to show. */
export interface AxleLook {
  /** Whose forces can be moved and have their moments drawn as areas. */
  readonly which: AxleCase;
  readonly measures: readonly QuantityId[];
  /** Parameters that can be grabbed. */
  readonly handles: readonly ParameterId[];
  readonly units: UnitSystem;
}

const SIDES = ['right', 'left'] as const;

/**
 * Both front wheels from above, straight ahead: tie rods and rack, the road’s forces, the moment of each about its
 * axis as an area, what the rods do to the rack, and what the forces do to the car.
 */
export function axleScene(model: CornerModel, setting: Setting, look: AxleLook): Scene {
  const now = standing(model, setting);
  const axle = axleStanding(now);
  const before = isChanged(setting) ? axleStanding(standing(model, unchanged(setting))) : undefined;
  const window = axleWindow(model);
  const unit = axleUnit(window);
  const place = (side: SidePlace['side']): SidePlace => ({
    side,
    axle,
    look,
    unit,
    anatomy: { ...model.anatomy, tyreRadius: model.anatomy.tyreRadius + setting.radius },
    setting,
  });
  const each = (marks: (at: SidePlace) => readonly Mark[]): Mark[] =>
    SIDES.flatMap((side) => onSide(side, marks(place(side))));
  return {
    title: 'Front axle from above',
    description: axleDescription(now, setting, look),
    window,
    marks: [
      ...each((at) => cornerBody(at, now.wheelShift)),
      ...rackBody(axle),
      ...(before ? each((at) => cornerBefore({ ...at, axle: before })) : []),
      ...(before ? each((at) => tileBefore({ ...at, axle: before })) : []),
      ...each(momentMarks),
      ...each(alongForce),
      ...each(sideForce),
      ...each(sideName),
      ...rackForces(axle, look, unit),
      ...yawMarks(now, look, window),
      ...scaleNote(axle, look, window),
      ...SIDES.flatMap((side) => axleHandle(place(side)) ?? []),
    ],
  };
}

/** Marks of one side, told apart from those of the other. */
const onSide = (side: SidePlace['side'], marks: readonly Mark[]): Mark[] =>
  marks.map((mark) => ({ ...mark, key: `${side}-${mark.key}` }));
