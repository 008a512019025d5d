import { heading, outboard } from '#core/corner.ts';
import type { UnitSystem } from '#core/display.ts';
import type { QuantityId } from '#core/quantities.ts';
import { along, dot, minus, vector, type Vector } from '#core/vector.ts';
import { named } from '../corner/measure-place.ts';
import { path } from '../corner/sketch.ts';
import { valueOf, type Standing } from '../corner/standing.ts';
import type { Mark } from '../marks.ts';
import { straight } from './seen-runs.ts';
import type { Stage } from './stage.ts';

/** Squares of the grid on the road, in metres, and how many to each side. */
const SQUARE = 0.1;
const SQUARES = 3;

/** Half the width of a lever's band on the road, in metres. */
const BAND = 0.006;

/** A grid on the road, along the car and across it; it stays with the car while the wheel turns. */
export function gridInSpace({ line }: Stage, { ahead, geometry }: Standing): Mark[] {
  const { x, y } = ahead.wheelCentre;
  const { z } = geometry.contactCentre;
  const reach = SQUARE * SQUARES;
  return Array.from({ length: 2 * SQUARES + 1 }, (_, i) => SQUARE * (i - SQUARES)).flatMap(
    (beside, i) => [
      ...line(straight(vector(x - reach, y + beside, z), vector(x + reach, y + beside, z)), {
        key: `grid-along-${i}`,
        role: 'ground',
        seen: 'faint',
      }),
      ...line(straight(vector(x + beside, y - reach, z), vector(x + beside, y + reach, z)), {
        key: `grid-across-${i}`,
        role: 'ground',
        seen: 'faint',
      }),
    ],
  );
}

/** Trail and scrub radius as bands on the road, from the axis along the wheel and across it to the contact centre. */
export function leversInSpace(
  { onto }: Stage,
  now: Standing,
  measures: readonly QuantityId[],
  units: UnitSystem,
): Mark[] {
  const { groundPoint, contactCentre } = now.geometry;
  const [ahead, out] = [heading(now.corner), outboard(now.corner)];
  const corner = along(groundPoint, dot(minus(contactCentre, groundPoint), ahead), ahead);
  const band = (id: 'trail' | 'scrubRadius', from: Vector, to: Vector, aside: Vector): Mark[] => {
    const edge = [
      along(from, BAND, aside),
      along(to, BAND, aside),
      along(to, -BAND, aside),
      along(from, -BAND, aside),
    ];
    const middle = along(from, 0.5, minus(to, from));
    return [
      {
        ...path(edge.map(onto), { key: `${id}-band`, role: 'lever', line: 'none', filled: true }),
        quantity: id,
      },
      {
        kind: 'label',
        key: `${id}-name`,
        role: 'lever',
        quantity: id,
        at: onto(middle),
        text: named(id, valueOf(id, now), units),
      },
    ];
  };
  return [
    ...(measures.includes('trail') ? band('trail', groundPoint, corner, out) : []),
    ...(measures.includes('scrubRadius') ? band('scrubRadius', corner, contactCentre, ahead) : []),
  ];
}
