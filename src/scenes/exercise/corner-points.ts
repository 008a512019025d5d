import { downInWheelPlane, type Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import { along, type Vector } from '#core/vector.ts';
import { flat, type Sketch } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';

/** A point of a bare corner that may have a letter or a name. */
export type PicturePoint = keyof typeof POINT_WORDS;

export const POINT_WORDS = {
  contact: 'in the middle of the tyre, on the road',
  ground: 'on the steering axis, where it meets the road',
  centre: 'at the wheel centre',
  axisAtCentre: 'on the steering axis, at the height of the wheel centre',
  top: 'in the middle of the tyre, at its top',
  axis: 'along the steering axis',
} as const;

function placeOf(at: PicturePoint, corner: Corner): Vector {
  const { contactCentre, groundPoint, axisAtCentre } = measure(corner);
  const { wheelCentre, loadedRadius, spin } = corner;
  switch (at) {
    case 'contact':
      return contactCentre;
    case 'ground':
      return groundPoint;
    case 'centre':
      return wheelCentre;
    case 'axisAtCentre':
      return axisAtCentre;
    case 'top':
      return along(wheelCentre, -loadedRadius, downInWheelPlane(spin));
    case 'axis':
      return atHeight(corner.axis, wheelCentre.z + 0.75 * loadedRadius);
  }
}

export function pointMarks(
  at: PicturePoint,
  says: string,
  sketch: Sketch,
  corner: Corner,
  wrong = false,
): readonly Mark[] {
  const place = flat(sketch, placeOf(at, corner));
  const role = at === 'contact' || at === 'centre' || at === 'top' ? 'wheel' : 'axis';
  const pen = { role, at: place, ...(wrong && { wrong, ringed: true }) } as const;
  const key = `${wrong ? 'wrong-' : ''}at-${at}`;
  const label: Mark = { ...pen, kind: 'label', key: `${key}-name`, text: says };
  return at === 'axis' ? [label] : [{ ...pen, kind: 'spot', key }, label];
}

/** Both pivots, ringed. */
export const pivotMarks = (sketch: Sketch, { pivots }: Corner): readonly Mark[] =>
  pivots
    ? (['lower', 'upper'] as const).map((which) => ({
        kind: 'spot',
        key: `pivot-${which}`,
        role: 'axis',
        at: flat(sketch, pivots[which]),
        ringed: true,
      }))
    : [];
