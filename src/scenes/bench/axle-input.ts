import type { CornerModel } from '#core/car/car.ts';
import { contactCentre, type Side } from '#core/corner.ts';
import { path, type Sketch } from '../corner/sketch.ts';
import { standing } from '../corner/standing.ts';
import { carrierSection, links } from '../corner/suspension-marks.ts';
import { tyreSilhouette, wheelSection } from '../corner/wheel-marks.ts';
import type { Mark } from '../marks.ts';
import { point } from '../plane.ts';
import { AS_IT_STANDS } from '../setting.ts';
import { across, label, type InputDrawing, type InputLook, seated } from './input-drawing.ts';

export type AxleInput = 'track_mm' | 'wheelLoad_N';

export const FROM_THE_FRONT = 'Both front wheels from the front.';

/** Room beside the tyres, in millimetres. */
const BESIDE = 130;

/** Thickness of a wheel scale and how far it reaches past the tyre, in units of paper. */
const PLATE = { thick: 8, past: 12 } as const;

/** Both front wheels from the front: the track on the floor, or a scale under each of them. */
export function axleInput(id: AxleInput, look: InputLook): InputDrawing {
  const { text } = look;
  const { corner, anatomy } = look.model;
  const contact = contactCentre(corner);
  const half = Math.abs(1000 * contact.y);
  const floor = 1000 * contact.z;
  const wheels = frontWheels(look);
  const height = 1.5 * wheels.across;
  const unit = height / 300;
  const [right, left] = [-half, half];
  const measured: Mark[] =
    id === 'track_mm'
      ? [
          path([point(right, floor - 5 * unit), point(left, floor - 5 * unit)], {
            key: 'tape',
            role: 'guide',
            line: 'heavy',
            closed: false,
          }),
          { kind: 'spot', key: 'tread-right', role: 'guide', at: point(right, floor) },
          { kind: 'spot', key: 'tread-left', role: 'guide', at: point(left, floor) },
          seated('tape', point(0, floor + 12 * unit), 'tape on the floor'),
          across(point(right, floor), point(left, floor), floor - 34 * unit, text),
        ]
      : [
          ...[right, left].map((at) => plate(at, floor, anatomy.tyreWidth / 2, unit)),
          {
            kind: 'arrow',
            key: 'load',
            role: 'force',
            from: point(left, floor - 50 * unit),
            to: point(left, floor - PLATE.thick * unit),
          },
          seated('load', point(left, floor - 56 * unit), text, 'force'),
          label('board', point(right, floor - 20 * unit), 'board as high as the scale'),
        ];
  return {
    seen: FROM_THE_FRONT,
    window: { centre: point(0, floor + 0.2 * height), height },
    marks: [
      {
        kind: 'ground',
        key: 'ground',
        role: 'ground',
        up: id === 'track_mm' ? floor : floor - PLATE.thick * unit,
      },
      ...wheels.marks,
      ...measured,
    ],
  };
}

/** Both front wheels from the front, and how far across half of them reaches with room beside it. */
export function frontWheels({ model, other }: InputLook): { across: number; marks: Mark[] } {
  const half = Math.abs(1000 * contactCentre(model.corner).y);
  return {
    across: half + model.anatomy.tyreWidth / 2 + BESIDE,
    marks: [...wheelOn(model), ...wheelOn(other)],
  };
}

/** A scale that a wheel stands on. */
const plate = (at: number, floor: number, halfTyre: number, unit: number): Mark => {
  const half = halfTyre + PLATE.past * unit;
  const foot = floor - PLATE.thick * unit;
  return path(
    [
      point(at - half, foot),
      point(at - half, floor),
      point(at + half, floor),
      point(at + half, foot),
    ],
    { key: `scale${Math.sign(at)}`, role: 'guide', line: 'heavy', filled: true },
  );
};

function wheelOn(model: CornerModel): Mark[] {
  const { side }: { side: Side } = model.corner;
  const sketch: Sketch = { view: 'front', side };
  const now = standing(model, AS_IT_STANDS);
  return [
    tyreSilhouette(sketch, now, model.anatomy),
    ...wheelSection(sketch, now, model.anatomy),
    ...links(sketch, now, model.anatomy, 'thin'),
    ...carrierSection(sketch, now, model.anatomy, 0),
  ].map((mark) => ({ ...mark, key: `${side}-${mark.key}` }));
}
