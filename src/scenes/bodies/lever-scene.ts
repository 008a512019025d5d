import type { CornerModel } from '#core/car/car.ts';
import { outboard, outboardSign, type Corner } from '#core/corner.ts';
import { valueText } from '#core/display.ts';
import { belowCentre } from '#core/free-bodies.ts';
import { atHeight } from '#core/line.ts';
import { quantity } from '#core/quantities.ts';
import { dot, minus } from '#core/vector.ts';
import { axisLine, axisSpots, wheelCentreLines } from '../corner/axis-marks.ts';
import { endOn } from '../corner/end-on.ts';
import { paperUnit } from '../corner/measure-place.ts';
import { bar, flat, type Sketch } from '../corner/sketch.ts';
import { standing } from '../corner/standing.ts';
import { carrierSection, links } from '../corner/suspension-marks.ts';
import { tyreSilhouette, wheelSection } from '../corner/wheel-marks.ts';
import type { Mark, Scene, Window } from '../marks.ts';
import { point } from '../plane.ts';
import type { Setting } from '../setting.ts';
import type { BodiesLook } from './bodies-look.ts';
import { BODIES_CASES } from './cases.ts';
import { sizeOf, sizeText } from './deed-words.ts';
import { feltAtCentre } from './deeds.ts';

/** Units of paper: the ring of a force that is seen from its end, half of the lever's width, and how far above it the dimension lies. */
const RING = 8;
const HALF_WIDTH = 4;
const DIMENSION = 30;

/** The carrier's force once more, from the front: how far it is from the steering axis at the height where it is counted. */
export function leverScene(model: CornerModel, setting: Setting, look: BodiesLook): Scene {
  const now = standing(model, setting);
  const { corner } = now;
  const { anatomy } = model;
  const sketch: Sketch = { view: 'front', side: corner.side };
  const window = leverWindow(model.corner);
  const marks = leverMarks(sketch, corner, setting, look, paperUnit(window));
  return {
    title: `Lever of the force, ${corner.side} front, from the front`,
    description: description(corner, setting, look),
    window,
    marks: [
      { kind: 'ground', key: 'road', role: 'ground', up: 1000 * now.geometry.contactCentre.z },
      tyreSilhouette(sketch, now, anatomy),
      ...wheelSection(sketch, now, anatomy),
      ...links(sketch, now, anatomy, 'thin'),
      ...carrierSection(sketch, now, anatomy, setting.spacer),
      ...wheelCentreLines(sketch, now),
      axisLine(sketch, now),
      ...axisSpots(sketch, now),
      ...marks,
    ],
  };
}

/** From the axis out to the force, across the car, positive where the axis passes inboard: q at the wheel centre, r at the road. */
export function offsetAt(corner: Corner, share: number): number {
  const at = belowCentre(corner, share);
  return dot(minus(at, atHeight(corner.axis, at.z)), outboard(corner));
}

/** What that distance is called: at the two ends it has a name. */
const offsetName = (share: number): string =>
  share === 0
    ? quantity('spindleOffset').name
    : share === 1
      ? quantity('scrubRadius').name
      : 'axis to force';

function leverMarks(
  sketch: Sketch,
  corner: Corner,
  setting: Setting,
  { which, carried = 0, units }: BodiesLook,
  unit: number,
): Mark[] {
  if (setting[BODIES_CASES[which].load] === 0) return [];
  const at = belowCentre(corner, carried);
  const [a, f] = [flat(sketch, atHeight(corner.axis, at.z)), flat(sketch, at)];
  const action = feltAtCentre(corner, setting, which);
  const size = sizeOf(corner, { kind: 'force', action });
  const lift = DIMENSION * unit;
  return [
    {
      kind: 'dimension',
      key: 'offset',
      role: 'guide',
      from: a,
      to: f,
      fromFoot: point(a.across, a.up + lift),
      toFoot: point(f.across, a.up + lift),
      text: `${offsetName(carried)} ${valueText(offsetAt(corner, carried), 'length', units)}`,
    },
    ...endOn('felt', f, RING * unit, size < 0),
    bar(a, f, HALF_WIDTH * unit, { key: 'lever', role: 'lever', line: 'none', filled: true }),
    { kind: 'spot', key: 'axis-there', role: 'axis', at: a },
    {
      kind: 'label',
      key: 'felt-name',
      role: 'force',
      at: point(f.across + outboardSign(corner.side) * RING * unit, f.up),
      text: `${sizeText(corner, { kind: 'force', action }, units)} ${size < 0 ? 'away from you' : 'toward you'}`,
    },
  ];
}

function leverWindow({ wheelCentre, loadedRadius, side }: Corner): Window {
  const hub = flat({ view: 'front', side }, wheelCentre);
  return {
    centre: point(hub.across - 45 * outboardSign(side), hub.up - 1000 * loadedRadius + 185),
    height: 520,
  };
}

function description(
  corner: Corner,
  setting: Setting,
  { which, carried = 0, units }: BodiesLook,
): string {
  const start = 'The corner seen from the front.';
  if (setting[BODIES_CASES[which].load] === 0) return `${start} No force.`;
  const offset = offsetAt(corner, carried);
  const way = offset >= 0 ? 'inboard' : 'outboard';
  const words = `${offsetName(carried)} ${valueText(Math.abs(offset), 'length', units)}`;
  return `${start} At the height of the force the axis passes ${way} of it: ${words}.`;
}
