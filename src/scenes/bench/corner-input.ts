import type { InputId } from '#core/judgement/inputs.ts';
import type { QuantityId } from '#core/quantities.ts';
import { cornerScene, type PartName } from '../corner/corner-scene.ts';
import { paperUnit } from '../corner/measure-place.ts';
import { path } from '../corner/sketch.ts';
import type { Closeness } from '../corner/windows.ts';
import type { Mark } from '../marks.ts';
import { point, type View } from '../plane.ts';
import { AS_IT_STANDS } from '../setting.ts';
import { cornerPlaces, type CornerPlaces } from './corner-places.ts';
import { across, label, upright, type InputDrawing, type InputLook } from './input-drawing.ts';
import { plumbLine, straightedge } from './tools.ts';

/** How an input is shown: in which view, how close, and what of the corner is named or dimensioned besides. */
interface Showing {
  readonly view: View;
  readonly closeness: Closeness;
  readonly measures?: readonly QuantityId[];
  readonly names?: readonly PartName[];
}

const FRONT: Showing = { view: 'front', closeness: 'whole' };
const SIDE: Showing = { view: 'side', closeness: 'whole' };
const HUB: Showing = { view: 'front', closeness: 'hub' };

/** The inputs that are measured on one corner, seen from the front or from the side. */
const SHOWN = {
  hubUp_mm: FRONT,
  halfRim_mm: HUB,
  rimWidth_in: HUB,
  inset_mm: HUB,
  camber_deg: { ...FRONT, measures: ['camber'] },
  camberSet_deg: { ...FRONT, measures: ['camber'] },
  caster_deg: { ...SIDE, measures: ['caster'], names: ['axis'] },
  inclination_deg: { ...FRONT, measures: ['inclination'], names: ['axis'] },
  lowerIn_mm: { ...FRONT, names: ['lower'] },
  lowerUp_mm: { ...FRONT, names: ['lower'] },
  upperIn_mm: { ...FRONT, names: ['upper'] },
  upperUp_mm: { ...FRONT, names: ['upper'] },
  lowerAhead_mm: { ...SIDE, names: ['lower'] },
  upperAhead_mm: { ...SIDE, names: ['upper'] },
} as const satisfies Partial<Record<InputId, Showing>>;

export type CornerInput = keyof typeof SHOWN;

const SEEN = {
  front: 'One front corner of the car from the front.',
  side: 'One front corner of the car from the side.',
  top: 'One front corner of the car from above.',
} as const;

/** A front corner of the car with one of its inputs dimensioned: from where to where it is measured. */
export function cornerInput(
  id: CornerInput,
  { model, value, text, units }: InputLook,
): InputDrawing {
  const { view, closeness, measures = [], names = [] }: Showing = SHOWN[id];
  const { window, marks } = cornerScene(model, AS_IT_STANDS, {
    view,
    closeness,
    measures,
    names,
    handles: [],
    units,
  });
  const places = cornerPlaces(model, view, paperUnit(window));
  return {
    seen: SEEN[view],
    window,
    marks: [...marks, ...dimensionsOf(id, places, value, text)],
  };
}

/** The input between the two places that it is measured between; angles have their drawing in the corner’s own. */
function dimensionsOf(id: CornerInput, places: CornerPlaces, value: number, text: string): Mark[] {
  const { unit, floor, centre, lower, upper, rim, out } = places;
  const { rimWidth, inset } = places.anatomy;
  const level = (from: number, to: number, up: number, foot: number): Mark[] => [
    across(point(from, up), point(to, up), foot, text),
  ];
  const fromFloor = (at: number, up: number, foot: number): Mark[] => [
    upright(point(at, floor), point(at, up), foot, text),
  ];
  const onFloor = (from: number, to: number): Mark[] => level(from, to, floor, floor - 26 * unit);
  const atHub = (from: number, to: number): Mark[] =>
    level(from, to, centre.up, centre.up + 70 * unit);
  /** The rim’s outer edge, as far outboard of a place as is entered: a flange’s thickness past what is drawn. */
  const rimLine = (from: number): number => from + out * 1000 * value;
  switch (id) {
    case 'hubUp_mm':
      return fromFloor(centre.across, centre.up, rim + 40 * unit * out);
    case 'halfRim_mm':
      return [
        ...straightedge(rimLine(centre.across), centre.up, unit),
        ...atHub(centre.across, rimLine(centre.across)),
      ];
    case 'rimWidth_in':
      return atHub(centre.across - rimWidth / 2, centre.across + rimWidth / 2);
    case 'inset_mm':
      return atHub(centre.across, centre.across + out * inset);
    case 'lowerIn_mm':
      return [
        ...plumbLine('rim', point(rimLine(lower.across), centre.up), floor, unit),
        ...plumbLine('lower', lower, floor, unit),
        ...onFloor(rimLine(lower.across), lower.across),
      ];
    case 'upperIn_mm':
      return [
        ...plumbLine('rim', point(rimLine(upper.across), centre.up), floor, unit),
        ...plumbLine('upper', upper, floor, unit),
        ...onFloor(rimLine(upper.across), upper.across),
      ];
    case 'lowerUp_mm':
      return fromFloor(lower.across, lower.up, lower.across - 60 * out);
    case 'upperUp_mm':
      return fromFloor(upper.across, upper.up, upper.across - 60 * out);
    case 'lowerAhead_mm':
      return [
        ...plumbLine('lower', lower, floor, unit),
        ...plumbLine('centre', centre, floor, unit),
        ...onFloor(centre.across, lower.across),
      ];
    case 'upperAhead_mm':
      return [
        ...plumbLine('upper', upper, floor, unit),
        ...plumbLine('centre', centre, floor, unit),
        ...onFloor(centre.across, upper.across),
      ];
    case 'camberSet_deg':
      return setBeside(places, value, text);
    case 'camber_deg':
    case 'caster_deg':
    case 'inclination_deg':
      return [];
  }
}

/** Where the wheel would stand at the camber that was to be set, dashed, beside how it stands. */
function setBeside(
  { unit, floor, centre, out }: CornerPlaces,
  value: number,
  text: string,
): Mark[] {
  const reach = 2 * (centre.up - floor);
  const top = point(centre.across - out * (reach / 2) * Math.tan(value), floor + reach);
  const foot = point(centre.across + out * (reach / 2) * Math.tan(value), floor);
  return [
    path([foot, top], { key: 'as-marked', role: 'wheel', line: 'hidden', closed: false }),
    label('input', point(top.across, top.up - 20 * unit), `set ${text} beside its mark`),
  ];
}
