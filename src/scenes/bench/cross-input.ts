import type { CornerModel } from '#core/car/car.ts';
import { contactCentre } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import { along } from '#core/vector.ts';
import { writeDegrees } from '#core/write-number.ts';
import { cornerScene } from '../corner/corner-scene.ts';
import { wheelAxes } from '../corner/part-axes.ts';
import { flat, path, type Sketch } from '../corner/sketch.ts';
import type { Mark, Window } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import { AS_IT_STANDS } from '../setting.ts';
import { FROM_THE_FRONT, frontWheels } from './axle-input.ts';
import { label, type InputDrawing, type InputLook, seated } from './input-drawing.ts';

export type CrossInput = 'crossCamber_deg' | 'crossCaster_deg' | 'crossInclination_deg';

/** Room above the upper pivots for words, in millimetres. */
const ABOVE = 190;

/** An angle of both front wheels, and the left one less the right one. */
export const crossInput = (id: CrossInput, look: InputLook): InputDrawing =>
  id === 'crossCaster_deg' ? casters(look) : fromTheFront(id, look);

/** As close as the sheet has it. */
const written = (angle: number): string => writeDegrees(angle, 2);

/** What leans in the view from the front: each wheel’s plane, or its steering axis. */
function fromTheFront(id: Exclude<CrossInput, 'crossCaster_deg'>, look: InputLook): InputDrawing {
  const of = id === 'crossCamber_deg' ? 'camber' : 'inclination';
  const { model, other, text } = look;
  const floor = 1000 * contactCentre(model.corner).z;
  const top = Math.max(...[model, other].map(({ corner }) => 1000 * corner.pivots.upper.z)) + ABOVE;
  const { across, marks } = frontWheels(look);
  const height = Math.max(1.2 * (top - floor), 1.5 * across);
  return {
    seen: FROM_THE_FRONT,
    window: { centre: point(0, floor + 0.4 * height), height },
    marks: [
      { kind: 'ground', key: 'ground', role: 'ground', up: floor },
      ...marks,
      ...leaning(of, model),
      ...leaning(of, other),
      seated('input', point(0, top - ABOVE / 4), `left less right: ${text}`),
    ],
  };
}

function leaning(of: 'camber' | 'inclination', { corner }: CornerModel): Mark[] {
  const { side, axis, pivots, wheelCentre } = corner;
  const sketch: Sketch = { view: 'front', side };
  const contact = contactCentre(corner);
  const [foot, head] =
    of === 'camber'
      ? [contact, along(wheelCentre, corner.loadedRadius + 0.12, wheelAxes(corner).up)]
      : [pivots.lower, along(pivots.upper, 0.06, axis.direction)];
  const from: Point = flat(sketch, of === 'camber' ? foot : atHeight(axis, contact.z));
  const to: Point = flat(sketch, head);
  return [
    path([from, to], {
      key: `${side}-leaning`,
      role: of === 'camber' ? 'wheel' : 'axis',
      line: 'heavy-chain',
      closed: false,
    }),
    {
      kind: 'angle',
      key: `${side}-${of}`,
      role: 'guide',
      vertex: flat(sketch, foot),
      towards: to,
      text: `${side} ${written(measure(corner)[of])}`,
    },
  ];
}

/** The left corner from the side, with the right wheel’s axis through the same lower pivot. */
function casters({ model, other, text, units }: InputLook): InputDrawing {
  const { window, marks } = cornerScene(model, AS_IT_STANDS, {
    view: 'side',
    closeness: 'whole',
    measures: ['caster'],
    names: [],
    handles: [],
    units,
  });
  const lower = flat({ view: 'side', side: model.corner.side }, model.corner.pivots.lower);
  const upper = flat({ view: 'side', side: model.corner.side }, model.corner.pivots.upper);
  const { axis } = other.corner;
  const forward = Math.sign(flat({ view: 'side', side: 'left' }, { x: 1, y: 0, z: 0 }).across);
  const rise = upper.up - lower.up + 60;
  const end = point(
    lower.across + (forward * rise * axis.direction.x) / axis.direction.z,
    lower.up + rise,
  );
  const { caster } = measure(other.corner);
  return {
    seen: 'The left front corner of the car from the side, with the steering axis of the right one dashed.',
    window,
    marks: [
      ...marks,
      path([lower, end], { key: 'right-axis', role: 'axis', line: 'hidden', closed: false }),
      label('right-axis', end, `right wheel, dashed: ${written(caster)}`, 'axis'),
      seated('input', high(window), `left less right: ${text}`),
    ],
  };
}

/** High on the left of the paper, clear of wheel and strut. */
const high = ({ centre, height }: Window): Point =>
  point(centre.across - 0.38 * height, centre.up + 0.4 * height);
