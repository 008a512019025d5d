import { contactCentre } from '#core/corner.ts';
import { valueText } from '#core/display.ts';
import { circle, flat, path, type Sketch } from '../corner/sketch.ts';
import { standing } from '../corner/standing.ts';
import { tyreSilhouette, wheelFace } from '../corner/wheel-marks.ts';
import type { Mark } from '../marks.ts';
import { point, rightward } from '../plane.ts';
import { AS_IT_STANDS } from '../setting.ts';
import { across, label, type InputDrawing, type InputLook, seated } from './input-drawing.ts';

/** A wheel from outside, rolled one turn along a tape, the mark at the road in both places. */
export function rollingInput({ model, text, units }: InputLook): InputDrawing {
  const { corner, anatomy } = model;
  const sketch: Sketch = { view: 'side', side: corner.side };
  const way = 2000 * Math.PI * model.rollingRadius;
  const end = way * rightward('side', corner.side);
  const floor = 1000 * contactCentre(corner).z;
  const height = 0.75 * (way + 2 * anatomy.tyreRadius + 120);
  const unit = height / 300;
  const now = standing(model, AS_IT_STANDS);
  const wheel = [tyreSilhouette(sketch, now, anatomy), ...wheelFace(sketch, now, anatomy)];
  const start = flat(sketch, corner.wheelCentre).across;
  const mark = (key: string, at: number): Mark =>
    path([point(at, floor), point(at, floor + 26 * unit)], {
      key,
      role: 'wheel',
      line: 'heavy',
      closed: false,
    });
  return {
    seen: 'A front wheel from outside, where it starts and one turn on.',
    window: { centre: point(start + end / 2, floor + 0.13 * height), height },
    marks: [
      { kind: 'ground', key: 'ground', role: 'ground', up: floor },
      ...wheel.map((one) => ({ ...one, before: true })),
      ...wheel.map((one) => shifted(one, end)),
      mark('mark', start),
      mark('mark-after', start + end),
      path([point(start, floor - 5 * unit), point(start + end, floor - 5 * unit)], {
        key: 'tape',
        role: 'guide',
        line: 'heavy',
        closed: false,
      }),
      label('turn', point(start + end / 2, floor + 1.2 * anatomy.tyreRadius), 'one turn'),
      {
        kind: 'arrow',
        key: 'turn',
        role: 'guide',
        from: point(start + 0.42 * end, floor + anatomy.tyreRadius),
        to: point(start + 0.58 * end, floor + anatomy.tyreRadius),
      },
      across(
        point(start, floor),
        point(start + end, floor),
        floor - 34 * unit,
        `${valueText(way / 1000, 'length', units)} = ${text} diameters`,
      ),
    ],
  };
}

/** Two tyres from outside with a tape around each. */
export function tapedTyresInput({ model, value, text }: InputLook): InputDrawing {
  const { tyreRadius, rimRadius } = model.anatomy;
  const other = tyreRadius * (1 + value);
  const height = 0.75 * (2 * (tyreRadius + other) + 220);
  const unit = height / 300;
  const tyre = (key: string, at: number, radius: number, name: string): Mark[] => [
    circle(point(at, 0), radius, { key: `${key}-tyre`, role: 'wheel', filled: true }),
    circle(point(at, 0), rimRadius, { key: `${key}-rim`, role: 'wheel', line: 'thin' }),
    circle(point(at, 0), radius + 3 * unit, { key: `${key}-tape`, role: 'guide', line: 'heavy' }),
    path([point(at, radius + 3 * unit), point(at + 0.3 * radius, radius + 16 * unit)], {
      key: `${key}-tape-end`,
      role: 'guide',
      line: 'heavy',
      closed: false,
    }),
    seated(key, point(at, 0), name, 'wheel'),
  ];
  return {
    seen: 'Two tyres of one size from outside, a tape around each.',
    window: { centre: point(0, 0), height },
    marks: [
      ...tyre('own', -tyreRadius - 40, tyreRadius, 'your tyre'),
      ...tyre('new', other + 40, other, 'the new make'),
      label('input', point(other + 40, -other - 8 * unit), `around: ${text} more`),
    ],
  };
}

const shifted = (mark: Mark, by: number): Mark =>
  mark.kind === 'path'
    ? {
        ...mark,
        key: `${mark.key}-after`,
        points: mark.points.map(({ across: at, up }) => point(at + by, up)),
      }
    : mark;
