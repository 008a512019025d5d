import type { CornerModel } from '#core/car/car.ts';
import { valueText, type UnitSystem } from '#core/display.ts';
import { inputAbout, type InputId } from '#core/judgement/inputs.ts';
import type { QuantityId } from '#core/quantities.ts';
import { cornerScene, type PartName } from '../corner/corner-scene.ts';
import { paperUnit } from '../corner/measure-place.ts';
import type { Closeness } from '../corner/windows.ts';
import type { Mark, Scene } from '../marks.ts';
import { point, type View } from '../plane.ts';
import { AS_IT_STANDS } from '../setting.ts';
import { cornerPlaces, type CornerPlaces } from './corner-places.ts';
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

/** The inputs that a picture tells more of than words. */
const SHOWN = {
  hubUp_mm: FRONT,
  halfRim_mm: HUB,
  rimWidth_in: HUB,
  inset_mm: HUB,
  camber_deg: { ...FRONT, measures: ['camber'] },
  caster_deg: { ...SIDE, measures: ['caster'], names: ['axis'] },
  inclination_deg: { ...FRONT, measures: ['inclination'], names: ['axis'] },
  lowerIn_mm: { ...FRONT, names: ['lower'] },
  lowerUp_mm: { ...FRONT, names: ['lower'] },
  upperIn_mm: { ...FRONT, names: ['upper'] },
  upperUp_mm: { ...FRONT, names: ['upper'] },
  lowerAhead_mm: { ...SIDE, names: ['lower'] },
  upperAhead_mm: { ...SIDE, names: ['upper'] },
  loadLineOffset_mm: HUB,
} as const satisfies Partial<Record<InputId, Showing>>;

export type PicturedInput = keyof typeof SHOWN;

export const isPictured = (id: InputId): id is PicturedInput => Object.hasOwn(SHOWN, id);

/** A front corner of the car with one of its inputs dimensioned: from where to where it is measured. */
export function inputScene(
  model: CornerModel,
  id: PicturedInput,
  value: number,
  units: UnitSystem,
): Scene {
  const { view, closeness, measures = [], names = [] }: Showing = SHOWN[id];
  const scene = cornerScene(model, AS_IT_STANDS, {
    view,
    closeness,
    measures,
    names,
    handles: [],
    units,
  });
  const { name, tool } = inputAbout(id);
  const places = cornerPlaces(model, view, paperUnit(scene.window));
  const text = valueText(value, inputAbout(id).unit === 'deg' ? 'angle' : 'length', units);
  return {
    ...scene,
    title: `What to measure: ${name}`,
    description: `One front corner of the car. Dimensioned: ${name}, ${text} as it is now; found out with: ${tool}.`,
    marks: [...scene.marks, ...dimensionsOf(id, places, text)],
  };
}

/** The input between the two places that it is measured between; angles have their drawing in the corner’s own. */
function dimensionsOf(id: PicturedInput, places: CornerPlaces, text: string): Mark[] {
  const { unit, floor, centre, lower, upper, rim, out } = places;
  const { rimWidth, inset, loadLineOffset } = places.anatomy;
  const across = (from: number, to: number, up: number, foot: number): Mark[] => [
    {
      ...DIMENSION,
      from: point(from, up),
      to: point(to, up),
      fromFoot: point(from, foot),
      toFoot: point(to, foot),
      text,
    },
  ];
  const upright = (at: number, up: number, foot: number): Mark[] => [
    {
      ...DIMENSION,
      from: point(at, floor),
      to: point(at, up),
      fromFoot: point(foot, floor),
      toFoot: point(foot, up),
      text,
    },
  ];
  const onFloor = (from: number, to: number): Mark[] => across(from, to, floor, floor - 26 * unit);
  const atHub = (from: number, to: number): Mark[] =>
    across(from, to, centre.up, centre.up + 70 * unit);
  switch (id) {
    case 'hubUp_mm':
      return upright(centre.across, centre.up, rim + 40 * unit * out);
    case 'halfRim_mm':
      return [...straightedge(rim, centre.up, unit), ...atHub(centre.across, rim)];
    case 'rimWidth_in':
      return atHub(centre.across - rimWidth / 2, centre.across + rimWidth / 2);
    case 'inset_mm':
      return atHub(centre.across, centre.across + out * inset);
    case 'loadLineOffset_mm':
      return atHub(centre.across, centre.across - out * loadLineOffset);
    case 'lowerIn_mm':
      return [
        ...plumbLine('rim', point(rim, centre.up), floor, unit),
        ...plumbLine('lower', lower, floor, unit),
        ...onFloor(rim, lower.across),
      ];
    case 'upperIn_mm':
      return [
        ...plumbLine('rim', point(rim, centre.up), floor, unit),
        ...plumbLine('upper', upper, floor, unit),
        ...onFloor(rim, upper.across),
      ];
    case 'lowerUp_mm':
      return upright(lower.across, lower.up, lower.across - 60 * out);
    case 'upperUp_mm':
      return upright(upper.across, upper.up, upper.across - 60 * out);
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
    case 'camber_deg':
    case 'caster_deg':
    case 'inclination_deg':
      return [];
  }
}

const DIMENSION = { kind: 'dimension', key: 'input', role: 'guide' } as const;
