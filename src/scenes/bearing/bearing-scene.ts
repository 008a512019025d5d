import type { CornerModel } from '#core/car/car.ts';
import { outboardSign } from '#core/corner.ts';
import { bearingLoads, wheelLoad } from '../corner/bearing-values.ts';
import { paperUnit } from '../corner/measure-place.ts';
import { path } from '../corner/sketch.ts';
import { standing, valueOf, type Standing } from '../corner/standing.ts';
import type { Mark, Scene, Window } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import { isChanged, unchanged, type Setting } from '../setting.ts';
import '../values/bearing.ts';
import { bearingDimensions } from './bearing-dimensions.ts';
import type { BearingLook } from './bearing-look.ts';
import { bearingParts, spacerPart, wheelParts } from './bearing-parts.ts';
import { bearingSizes, placingOn, type BearingSizes, type Placing } from './bearing-sizes.ts';
import { contactLines } from './contact-lines.ts';
import { bearingDescription } from './describe-bearing.ts';
import { forceWay } from './force-way.ts';
import { BELOW, loadArrows } from './load-arrows.ts';

/** Rows without load. */
const UNPRESSED = { outboard: 0, inboard: 0 } as const;

/** How far the section reaches to either side of the spin axis, in millimetres. */
const REACH = 92;

/** A wheel bearing cut open along its spin axis, seen from ahead: rows, contact lines, load line, and who holds what. */
export function bearingScene(model: CornerModel, setting: Setting, look: BearingLook): Scene {
  const now = standing(model, setting);
  const { side } = now.corner;
  const sizes = bearingSizes(now, model.anatomy);
  const place = placingOn(side);
  const window = bearingWindow(model, look);
  const loads = bearingLoads(now);
  const earlier = isChanged(setting) ? standing(model, unchanged(setting)) : undefined;
  const whole = look.view === 'wheel';
  // Another inset is another wheel: its disc sits that much farther in on its own rim.
  const anatomy = { ...model.anatomy, inset: model.anatomy.inset + setting.inset };
  return {
    title: `Wheel bearing, ${side} front, from the front`,
    description: bearingDescription(side, now, look),
    window,
    marks: [
      ...(whole ? [road(sizes)] : []),
      ...wheelParts(sizes, anatomy, place, whole),
      ...bearingParts(sizes, place),
      ...spacerPart(sizes, setting.spacer, place),
      // While the force is on its way, the balls are not yet pressed.
      ...contactLines(sizes, look.way === undefined ? loads.radial : UNPRESSED, place),
      ...centreLines(sizes, look, place, earlier !== undefined),
      ...lineOfAction(sizes, now, look, place),
      ...bearingDimensions(sizes, now, look, place),
      ...(look.way === undefined
        ? loadArrows({
            sizes,
            load: wheelLoad(now),
            loads,
            before: earlier && bearingLoads(earlier),
            look,
            unit: paperUnit(window),
            place,
          })
        : forceWay(sizes, loads, look.way, place)),
      ...(look.named ? partNames(sizes, place) : []),
      ...(look.measures.includes('rowPitch') ? [pressureCentreName(sizes, place)] : []),
      ...handles(sizes, look, place),
    ],
  };
}

/** It hangs on the car as it stands, so that the paper keeps still. */
function bearingWindow({ corner }: CornerModel, { view }: BearingLook): Window {
  const out = outboardSign(corner.side);
  if (view === 'section') return { centre: point(20 * out, 0), height: 2 * REACH };
  return { centre: point(38 * out, 180 - 1000 * corner.loadedRadius), height: 420 };
}

const road = ({ loadedRadius }: BearingSizes): Mark => ({
  kind: 'ground',
  key: 'road',
  role: 'ground',
  up: -loadedRadius,
});

/** Spin axis, the rows' mid-plane, and the load line: the wheel's centre plane, pale where it was before. */
function centreLines(
  { loadLine, loadLineBefore, outerRadius, loadedRadius }: BearingSizes,
  { view, measures }: BearingLook,
  place: Placing,
  before: boolean,
): Mark[] {
  const line = { closed: false, line: 'chain' } as const;
  const top = view === 'wheel' ? 88 : REACH - 4;
  const bottom = view === 'wheel' ? -loadedRadius - 12 : -BELOW - 3;
  // The dimensions of the section stand at the top.
  const nameAtFoot = view === 'section' && measures.includes('loadLineOffset');
  const upright = (key: string, out: number): Mark =>
    path([place(out, top), place(out, bottom)], { key, role: 'wheel', ...line });
  return [
    path([place(-90, 0), place(128, 0)], { key: 'spin-axis', role: 'wheel', ...line }),
    path([place(0, outerRadius + 24), place(0, -outerRadius - 24)], {
      key: 'mid-plane',
      role: 'bearing',
      ...line,
    }),
    ...(before ? [{ ...upright('load-line-before', loadLineBefore), before: true }] : []),
    upright('load-line', loadLine),
    {
      kind: 'label',
      key: 'load-line-name',
      role: 'wheel',
      at: place(loadLine, nameAtFoot ? bottom + 10 : top),
      text: 'load line',
    },
  ];
}

/** Wheel load and side force together are one force; it runs up to where it crosses the spin axis. */
function lineOfAction(
  { loadLine, loadedRadius }: BearingSizes,
  now: Standing,
  { view, measures, units: _ }: BearingLook,
  place: Placing,
): Mark[] {
  const { vertical, inward } = wheelLoad(now);
  if (view === 'section' || !measures.includes('loadCrossing')) return [];
  if (!(vertical > 0) || inward === 0) return [];
  const crossing = place(1000 * valueOf('loadCrossing', now), 0);
  return [
    {
      ...path([place(loadLine, -loadedRadius), crossing], {
        key: 'line-of-action',
        role: 'force',
        closed: false,
        line: 'chain',
      }),
      quantity: 'loadCrossing',
    },
    { kind: 'spot', key: 'crossing', role: 'force', at: crossing, quantity: 'loadCrossing' },
    {
      kind: 'label',
      key: 'crossing-name',
      role: 'force',
      at: crossing,
      text: 'crosses here',
      quantity: 'loadCrossing',
    },
  ];
}

function partNames(sizes: BearingSizes, place: Placing): Mark[] {
  const { outerRadius, halfWidth, face, bore } = sizes;
  return [
    name('carrier', 'carrier', place(-halfWidth, outerRadius + 10)),
    name('outer-ring', 'outer ring', place(-halfWidth, outerRadius - 4)),
    name('inner-rings', 'inner rings', place(-halfWidth, bore + 4)),
    name('hub', 'hub', place(face, -4)),
    name('wheel', 'wheel', place(face + 16, 80)),
  ];
}

const pressureCentreName = ({ halfSpread }: BearingSizes, place: Placing): Mark =>
  name('pressure-centre', 'pressure centre', place(-halfSpread, 0));

const name = (key: string, text: string, at: Point): Mark => ({
  kind: 'label',
  key: `name-${key}`,
  role: 'guide',
  at,
  text,
});

/** The load line is taken at the wheel: a spacer or another inset carries both. */
function handles(
  { loadLine, outerRadius }: BearingSizes,
  look: BearingLook,
  place: Placing,
): Mark[] {
  const [parameter] = look.handles.filter((id) => id === 'spacer' || id === 'inset');
  if (parameter === undefined) return [];
  return [
    {
      kind: 'handle',
      key: `handle-${parameter}`,
      role: 'guide',
      parameter,
      at: place(loadLine, look.view === 'section' ? outerRadius + 8.5 : -150),
      moves: 'across',
    },
  ];
}
