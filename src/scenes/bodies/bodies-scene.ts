import type { Anatomy } from '#core/car/anatomy.ts';
import type { CornerModel } from '#core/car/car.ts';
import { contactCentre, heading, type Corner } from '#core/corner.ts';
import { along, dot, UP } from '#core/vector.ts';
import { paperUnit } from '../corner/measure-place.ts';
import { path } from '../corner/sketch.ts';
import { standing, type Standing } from '../corner/standing.ts';
import type { Mark, Scene } from '../marks.ts';
import { point, rightward } from '../plane.ts';
import type { Setting } from '../setting.ts';
import type { BodiesLook } from './bodies-look.ts';
import { caliperSide, carrierBody } from './carrier-body.ts';
import { deedMarks } from './deed-marks.ts';
import { deedName } from './deed-words.ts';
import { EDGE_ANGLE, type Deed } from './deeds.ts';
import { bodiesDescription } from './describe-bodies.ts';
import { isApart, shownDeeds } from './shown-deeds.ts';
import { bodiesWindow, onStage, staged, stageOf, type Stage } from './stage.ts';
import { wheelBody } from './wheel-body.ts';

/** How far an edge goes on ahead of the wheel, in millimetres: past the paper's end. */
const EDGE_LENGTH = 1500;

/** Names stand so far above the height of the tyre's top, and the carrier's beside its axis: units of paper. */
const NAME_ABOVE = 13;
const BESIDE_AXIS = 44;

/** Wheel and carrier of a corner from the side, drawn apart as free bodies, with all that is done to them along the car. */
export function bodiesScene(model: CornerModel, setting: Setting, look: BodiesLook): Scene {
  const now = standing(model, setting);
  const { corner } = now;
  const { which, apart } = look;
  const window = bodiesWindow(model.corner);
  const stages = {
    wheel: stageOf(corner, 'wheel', apart),
    carrier: stageOf(corner, 'carrier', apart),
  };
  const deeds = shownDeeds(corner, setting, look);
  const road = 1000 * contactCentre(corner).z;
  const unit = paperUnit(window);
  const caliper = caliperSide(corner);
  return {
    title: `Wheel and carrier, ${corner.side} front, from the side`,
    description: bodiesDescription(corner, deeds, look),
    window,
    marks: [
      { kind: 'ground', key: 'road', role: 'ground', up: road },
      ...(which === 'edge' ? [edge(corner, stages.wheel)] : []),
      ...staged(carrierBody(stages.carrier.sketch, now, model.anatomy), stages.carrier),
      ...staged(wheelBody(stages.wheel.sketch, now, model.anatomy), stages.wheel),
      ...(apart > 0 ? [joint(corner, stages.wheel, stages.carrier)] : []),
      ...(look.carried === undefined ? [] : [reach(corner, stages.carrier)]),
      ...deeds.flatMap((deed) =>
        deedMarks(deed, deed.text ?? deedName(deed), {
          corner,
          which,
          unit,
          road,
          caliper,
          stage: stages[deed.body],
          centre: onStage(stages[deed.body], corner.wheelCentre),
          room: roomFor(deed.body, corner, deeds),
        }),
      ),
      ...(isApart(look) ? names(now, model.anatomy, stages, unit) : []),
    ],
  };
}

/** A torque is drawn on the side of the wheel centre that the force in the bearing leaves free. */
function roomFor(body: Deed['body'], corner: Corner, deeds: readonly Deed[]): 1 | -1 {
  const inBearing = deeds.find(({ key }) => key === (body === 'wheel' ? 'held' : 'felt'));
  const ahead = rightward('side', corner.side);
  const goesAhead = inBearing ? dot(inBearing.action.force, heading(corner)) > 0 : true;
  return goesAhead === ahead > 0 ? -1 : 1;
}

/** From wheel centre to wheel centre: in truth the two are one point. */
const joint = ({ wheelCentre }: Corner, wheel: Stage, carrier: Stage): Mark =>
  path([onStage(wheel, wheelCentre), onStage(carrier, wheelCentre)], {
    key: 'joint',
    role: 'guide',
    closed: false,
    line: 'chain',
  });

/** A stiff arm from the wheel centre to the road: thought of, and so dashed. */
const reach = (corner: Corner, carrier: Stage): Mark =>
  path([onStage(carrier, corner.wheelCentre), onStage(carrier, contactCentre(corner))], {
    key: 'reach',
    role: 'part',
    closed: false,
    line: 'hidden',
  });

/** A kerb, or the far side of a hole: it touches the tyre where its push comes from. */
function edge(corner: Corner, wheel: Stage): Mark {
  const { wheelCentre, loadedRadius: radius } = corner;
  const below = along(wheelCentre, -radius * Math.sin(EDGE_ANGLE), UP);
  const tip = onStage(wheel, along(below, radius * Math.cos(EDGE_ANGLE), heading(corner)));
  const road = onStage(wheel, contactCentre(corner)).up;
  const end = tip.across + EDGE_LENGTH * rightward('side', corner.side);
  return path([tip, point(end, tip.up), point(end, road), point(tip.across, road)], {
    key: 'edge',
    role: 'ground',
    filled: true,
  });
}

/** The names of the bodies, above them. */
function names(
  { corner }: Standing,
  { tyreRadius }: Anatomy,
  stages: Readonly<Record<Deed['body'], Stage>>,
  unit: number,
): Mark[] {
  const ahead = rightward('side', corner.side);
  const name = (text: Deed['body'], aside: number): Mark => {
    const { across, up } = onStage(stages[text], corner.wheelCentre);
    const at = point(across + aside * unit, up + tyreRadius + NAME_ABOVE * unit);
    return { kind: 'label', key: `name-${text}`, role: 'guide', at, text, here: true };
  };
  return [name('wheel', 0), name('carrier', -BESIDE_AXIS * ahead)];
}
