import type { CornerModel } from '#core/car/car.ts';
import type { UnitSystem } from '#core/display.ts';
import type { QuantityId } from '#core/quantities.ts';
import { sectionGain } from '#core/tyre/section-on-rim.ts';
import { VIEW_NAMES, type Point, type View } from '../plane.ts';
import type { Label, Mark, Scene, Window } from '../marks.ts';
import type { ParameterId } from '../parameters.ts';
import { isChanged, unchanged, type Setting } from '../setting.ts';
import { axisLine, axisSpots, wheelCentreLines } from './axis-marks.ts';
import { description } from './describe.ts';
import { forceMarks } from './force-marks.ts';
import { handleFor } from './handles.ts';
import type { Guesses } from './measure-place.ts';
import { measureMarks } from './measures.ts';
import { between, flat, type Sketch } from './sketch.ts';
import { standing, type Standing } from './standing.ts';
import {
  isSteeringPart,
  rackOutline,
  STEERING_PART_NAMES,
  steeringForces,
  steeringPlace,
} from './steering-marks.ts';
import { carrierSection, links } from './suspension-marks.ts';
import { traceMarks, type TraceName } from './trace-marks.ts';
import { tyreSilhouette, wheelFace, wheelSection } from './wheel-marks.ts';
import { windowOf, type Closeness } from './windows.ts';

/** What a figure of a corner is asked to show. */
export interface CornerLook {
  readonly view: View;
  readonly closeness: Closeness;
  /** Quantities to be dimensioned, at most a handful. */
  readonly measures: readonly QuantityId[];
  /** Parts to be named. */
  readonly names: readonly PartName[];
  /** Ways of points from lock to lock. */
  readonly traces?: readonly TraceName[];
  /** Parameters that can be grabbed. */
  readonly handles: readonly ParameterId[];
  readonly units: UnitSystem;
  readonly guesses?: Guesses;
}

export const PART_NAMES = {
  axis: 'steering axis',
  upper: 'upper pivot',
  lower: 'lower pivot',
  ground: 'axis at the road',
  contact: 'contact centre',
  centre: 'wheel centre',
  ...STEERING_PART_NAMES,
} as const;

export type PartName = keyof typeof PART_NAMES;

/** The drawing of a corner at a setting: road, wheel, carrier, links, axis, measures, names and handles. */
export function cornerScene(model: CornerModel, setting: Setting, look: CornerLook): Scene {
  const { view, closeness, units } = look;
  const { anatomy, corner } = model;
  const sketch: Sketch = { view, side: corner.side };
  const now = standing(model, setting);
  const window = windowOf(model, view, closeness);
  const before = isChanged(setting) ? standing(model, unchanged(setting)) : undefined;
  const place = { sketch, standing: now, window, units, guesses: look.guesses ?? {} };
  return {
    title: `${corner.side === 'left' ? 'Left' : 'Right'} front corner ${VIEW_NAMES[view]}`,
    description: description(view, now, setting, look.measures, units),
    window,
    marks: [
      ...body(sketch, now, model, setting),
      ...(asksForSteering(look) ? rackOutline(sketch, now) : []),
      ...(before
        ? [tyreSilhouette(sketch, before, anatomy, true), axisLine(sketch, before, true)]
        : []),
      ...wheelCentreLines(sketch, now),
      ...(look.traces ?? []).flatMap((name) => traceMarks(name, sketch, now, model, setting)),
      ...look.measures.flatMap((id) => measureMarks(id, place)),
      axisLine(sketch, now),
      ...axisSpots(sketch, now),
      ...forceMarks(sketch, now, window, units),
      ...steeringForces(sketch, now, look.measures, window, units),
      ...look.names.flatMap((name) => nameLabel(name, sketch, now, window) ?? []),
      ...look.handles.flatMap((id) => handleFor(id, sketch, now, closeness) ?? []),
    ],
  };
}

/** Wheel, carrier and links in the order in which they hide one another in this view. */
function body(sketch: Sketch, now: Standing, model: CornerModel, setting: Setting): Mark[] {
  // A loaded radius that grows is a taller tyre, not one that floats above the road.
  const anatomy = {
    ...model.anatomy,
    tyreRadius: model.anatomy.tyreRadius + setting.radius,
    rimWidth: model.anatomy.rimWidth + setting.wheelWidth,
    tyreWidth: model.anatomy.tyreWidth + sectionGain(setting.wheelWidth),
  };
  // The mounting face stays on the hub; with another inset the wheel's middle lies elsewhere about it.
  const wheel = { ...anatomy, inset: anatomy.inset + setting.inset };
  const tyre = tyreSilhouette(sketch, now, anatomy);
  const ground: Mark = {
    kind: 'ground',
    key: 'ground',
    role: 'ground',
    up: 1000 * now.geometry.contactCentre.z,
  };
  switch (sketch.view) {
    case 'front':
      return [
        ground,
        tyre,
        ...wheelSection(sketch, now, wheel),
        ...links(sketch, now, anatomy, 'thin'),
        ...carrierSection(sketch, now, anatomy, setting.spacer),
      ];
    case 'side':
      return [
        ground,
        ...links(sketch, now, anatomy, 'thin'),
        tyre,
        ...wheelFace(sketch, now, wheel),
      ];
    case 'top':
      return [...links(sketch, now, anatomy, 'thin'), tyre];
  }
}

/** Whether a look goes on from the tie rod to the rack. */
const asksForSteering = ({ measures, names }: CornerLook): boolean =>
  names.some(isSteeringPart) || measures.includes('rodForce') || measures.includes('rackForce');

/** The name beside its part; none where this view does not show it. */
function nameLabel(
  name: PartName,
  sketch: Sketch,
  now: Standing,
  window: Window,
): Label | undefined {
  const label = (role: Label['role'], at: Point): Label => ({
    kind: 'label',
    key: `name-${name}`,
    role,
    at,
    text: PART_NAMES[name],
  });
  if (isSteeringPart(name)) {
    const at = steeringPlace(name, sketch, now);
    return at && label('part', at);
  }
  const { corner, geometry } = now;
  const { lower, upper } = corner.pivots;
  const [l, u] = [flat(sketch, lower), flat(sketch, upper)];
  const places = {
    axis: between(l, u, Math.min(0.62, shareBelow(window, l, u))),
    upper: u,
    lower: l,
    ground: flat(sketch, geometry.groundPoint),
    contact: flat(sketch, geometry.contactCentre),
    centre: flat(sketch, corner.wheelCentre),
  };
  return label(name === 'contact' || name === 'centre' ? 'wheel' : 'axis', places[name]);
}

/** How far up from one pivot to the other the axis can be named on the paper, as a share of the way. */
function shareBelow({ centre, height }: Window, lower: Point, upper: Point): number {
  const rise = upper.up - lower.up;
  const top = centre.up + 0.38 * height;
  return rise > 0.1 * height ? (top - lower.up) / rise : 1;
}
