import { valueText } from '#core/display.ts';
import { discSection, rimSection } from '../corner/wheel-outlines.ts';
import type { PartPoint } from '../corner/part-axes.ts';
import { bar, path } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import { label, upright, type InputDrawing, type InputLook } from './input-drawing.ts';

/** How far the flanges stand outside the width that is marked, each side, in millimetres; as the rim is drawn. */
const FLANGE = 8;

/** A wheel cut open, lying on its outer face, with a straightedge over its inner flange. */
export function lyingWheelInput({ model, value, text, units }: InputLook): InputDrawing {
  const { anatomy } = model;
  const inset = anatomy.inset + 1000 * value;
  const wheel = { ...anatomy, inset };
  const half = anatomy.rimWidth / 2 + FLANGE;
  const reach = anatomy.rimRadius + 14;
  const height = 1.5 * (reach + 105);
  const unit = height / 300;
  const face = -inset;
  const mm = (length: number): string => valueText(length / 1000, 'length', units);
  return {
    seen: 'A wheel cut open, lying on its outer face.',
    window: { centre: point(0, 0.02 * height), height },
    marks: [
      { kind: 'ground', key: 'ground', role: 'ground', up: -half },
      ...([1, -1] as const).flatMap((side) => [
        lying(`disc-${side}`, discSection(wheel), side, true),
        lying(`rim-${side}`, rimSection(wheel), side, false),
      ]),
      bar(point(-reach - 25, half + 4), point(reach + 25, half + 4), 4, {
        key: 'straightedge',
        role: 'guide',
        filled: true,
      }),
      label('straightedge', point(-0.6 * reach, half + 8), 'straightedge'),
      path([point(-reach, 0), point(reach, 0)], {
        key: 'middle',
        role: 'wheel',
        line: 'chain',
        closed: false,
      }),
      label('middle', point(0.62 * reach, 0), 'middle of the rim', 'wheel'),
      {
        ...upright(point(-32, half), point(-32, face), -10, `tape ${mm(half + inset)}`),
        key: 'depth',
      },
      {
        ...upright(point(reach, -half), point(reach, half), reach + 22 * unit, mm(2 * half)),
        key: 'width',
      },
      label('input', point(-0.5 * reach, face), `inset: ${text} beside its mark`),
    ],
  };
}

function lying(key: string, section: readonly PartPoint[], side: 1 | -1, closed: boolean): Mark {
  const points: Point[] = section.map(([out, radius]) => point(side * radius, -out));
  return path(points, { key, role: 'wheel', closed, filled: closed });
}
