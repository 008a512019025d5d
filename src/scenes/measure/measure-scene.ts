import type { CornerModel } from '#core/car/car.ts';
import { outboardSign } from '#core/corner.ts';
import { valueText, type UnitSystem } from '#core/display.ts';
import { axisInAt } from '#core/own-car/front-geometry.ts';
import { measurementsOf } from '#core/own-car/readings-of.ts';
import { READINGS, type ReadingId, type Readings } from '#core/own-car/readings.ts';
import { combined, expanded } from '#core/uncertainty/linear.ts';
import { paperUnit } from '../corner/measure-place.ts';
import { circle, path, type Sketch } from '../corner/sketch.ts';
import { standing } from '../corner/standing.ts';
import { carrierSection, links } from '../corner/suspension-marks.ts';
import { tyreSilhouette, wheelSection } from '../corner/wheel-marks.ts';
import { windowOf, type Closeness } from '../corner/windows.ts';
import type { Mark, Scene } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import { AS_IT_STANDS } from '../setting.ts';

/** What the reader has written down, in metres and radians, and which reading is looked at. */
export interface MeasureLook {
  readonly readings: Readings;
  readonly doubts: Readings;
  readonly reading: ReadingId;
  readonly units: UnitSystem;
  readonly closeness: Closeness;
}

/** A place of the front view, from what was measured: millimetres inboard of the rim line and above the floor. */
type Place = (inboard: number, up: number) => Point;

/** The axis as measured is drawn at so many heights. */
const HEIGHTS = 12;

/** One front corner being measured: rim line, plumb lines, tape on the floor, and the axis as it comes out. */
export function measureScene(model: CornerModel, look: MeasureLook): Scene {
  const { corner, anatomy } = model;
  const now = standing(model, AS_IT_STANDS);
  const sketch: Sketch = { view: 'front', side: corner.side };
  const window = windowOf(model, 'front', look.closeness);
  const unit = paperUnit(window);
  const floor = 1000 * now.geometry.contactCentre.z;
  const out = outboardSign(corner.side);
  const rimLine = 1000 * corner.wheelCentre.y + out * (anatomy.rimWidth / 2);
  const place: Place = (inboard, up) => point(rimLine - out * inboard, floor + up);
  return {
    title: 'Measuring one front corner, from the front',
    description: describe(look),
    window,
    marks: [
      { kind: 'ground', key: 'ground', role: 'ground', up: floor },
      ...axisAsMeasured(look, place, 1000 * corner.pivots.upper.z - floor),
      tyreSilhouette(sketch, now, anatomy),
      ...wheelSection(sketch, now, anatomy),
      ...links(sketch, now, anatomy, 'thin'),
      ...carrierSection(sketch, now, anatomy, 0),
      ...tools(look.readings, place, unit),
      ...chosenReading(look, place, unit),
    ],
  };
}

const mm = (metres: number): number => 1000 * metres;

/** Where the axis may be: within ±U of where the readings put it, at every height. */
function axisAsMeasured(look: MeasureLook, place: Place, top: number): Mark[] {
  const inputs = measurementsOf(look.readings, look.doubts);
  const at = Array.from({ length: HEIGHTS + 1 }, (_, i) => {
    const up = (1.15 * top * i) / HEIGHTS;
    const { value, standard } = combined(axisInAt(up / 1000), inputs);
    return { up, inboard: mm(value), doubt: mm(expanded(standard)) };
  });
  const edge = (sign: 1 | -1): Point[] =>
    at.map(({ up, inboard, doubt }) => place(inboard + sign * doubt, up));
  return [
    path([...edge(1), ...edge(-1).toReversed()], {
      key: 'axis-doubt',
      role: 'axis',
      line: 'thin',
      filled: true,
    }),
    path(
      at.map(({ up, inboard }) => place(inboard, up)),
      { key: 'axis', role: 'axis', line: 'heavy-chain', closed: false },
    ),
    {
      kind: 'spot',
      key: 'ground-point',
      role: 'axis',
      at: place(at[0]?.inboard ?? 0, 0),
    },
  ];
}

/** Straightedge at the rim, plumb lines from both pivots, and the tape along the floor. */
function tools(readings: Readings, place: Place, unit: number): Mark[] {
  const { lowerIn, upperIn, lowerUp, upperUp, hubUp } = readings;
  const end = Math.max(mm(lowerIn), mm(upperIn)) + 40;
  return [
    ...plumbLine('rim', place, 0, mm(hubUp), unit),
    ...plumbLine('lower', place, mm(lowerIn), mm(lowerUp), unit),
    ...plumbLine('upper', place, mm(upperIn), mm(upperUp), unit),
    path([place(-20, -4 * unit), place(end, -4 * unit)], {
      key: 'tape',
      role: 'guide',
      line: 'heavy',
      closed: false,
    }),
    pivot('lower-pivot', place(mm(lowerIn), mm(lowerUp))),
    pivot('upper-pivot', place(mm(upperIn), mm(upperUp))),
  ];
}

const pivot = (key: string, at: Point): Mark => ({
  kind: 'spot',
  key,
  role: 'axis',
  at,
  ringed: true,
});

/** A thin line with a bob just above the floor. */
function plumbLine(key: string, place: Place, inboard: number, from: number, unit: number): Mark[] {
  const bob = 9 * unit;
  return [
    path([place(inboard, from), place(inboard, bob)], {
      key: `plumb-${key}`,
      role: 'guide',
      line: 'thin',
      closed: false,
    }),
    circle(place(inboard, bob * 0.7), 3.2 * unit, {
      key: `bob-${key}`,
      role: 'guide',
      line: 'outline',
      filled: true,
    }),
  ];
}

/** The reading that is looked at, as a dimension with its ±. */
function chosenReading(look: MeasureLook, place: Place, unit: number): Mark[] {
  const { reading, readings, doubts, units } = look;
  const { lowerIn, upperIn, lowerUp, upperUp, hubUp, halfRim } = readings;
  const { kind } = READINGS[reading];
  const text = `${valueText(readings[reading], kind, units)} ± ${valueText(doubts[reading], kind, units)}`;
  const dimension = (from: Point, to: Point, fromFoot: Point, toFoot: Point): Mark[] => [
    { kind: 'dimension', key: 'reading', role: 'guide', from, to, fromFoot, toFoot, text },
  ];
  const across = (inboard: number): Mark[] => {
    const foot = -26 * unit;
    return dimension(place(0, 0), place(inboard, 0), place(0, foot), place(inboard, foot));
  };
  const upward = (at: number, up: number, aside: number): Mark[] =>
    dimension(place(at, 0), place(at, up), place(aside, 0), place(aside, up));
  switch (reading) {
    case 'lowerIn':
      return across(mm(lowerIn));
    case 'upperIn':
      return across(mm(upperIn));
    case 'halfRim': {
      const [up, foot] = [mm(hubUp), mm(hubUp) + 60 * unit];
      return dimension(
        place(0, up),
        place(mm(halfRim), up),
        place(0, foot),
        place(mm(halfRim), foot),
      );
    }
    case 'lowerUp':
      return upward(mm(lowerIn), mm(lowerUp), mm(lowerIn) + 70);
    case 'upperUp':
      return upward(mm(upperIn), mm(upperUp), mm(upperIn) + 70);
    case 'hubUp':
      return upward(0, mm(hubUp), -60);
    case 'camber': {
      const lean = mm(hubUp) * Math.tan(readings.camber);
      const foot = place(mm(halfRim) + lean, 0);
      const top = place(mm(halfRim) - lean, 2 * mm(hubUp));
      return [{ kind: 'angle', key: 'reading', role: 'wheel', vertex: foot, towards: top, text }];
    }
  }
}

/** What the drawing shows, in words and from the same numbers. */
function describe({ reading, readings, doubts, units }: MeasureLook): string {
  const { name, kind, tool } = READINGS[reading];
  const value = `${valueText(readings[reading], kind, units)}, give or take ${valueText(doubts[reading], kind, units)}`;
  return [
    'One front corner from the front. A plumb line hangs from the outer edge of the rim, one from each pivot, and a tape lies on the floor across the car.',
    `Looked at: ${name}, ${value}, read with ${tool}.`,
    'The axis as measured is drawn with the band in which it may lie: narrow between the pivots, wider at the road.',
  ].join(' ');
}
