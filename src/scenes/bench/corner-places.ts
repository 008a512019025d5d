import type { Anatomy } from '#core/car/anatomy.ts';
import type { CornerModel } from '#core/car/car.ts';
import { contactCentre, outboardSign } from '#core/corner.ts';
import { flat } from '../corner/sketch.ts';
import type { Point, View } from '../plane.ts';

/** Where the places lie on a drawing of a corner that somebody measures between, in millimetres of the car. */
export interface CornerPlaces {
  /** One unit of paper. */
  readonly unit: number;
  readonly anatomy: Anatomy;
  readonly floor: number;
  readonly centre: Point;
  readonly lower: Point;
  readonly upper: Point;
  /** The outer edge of the rim, in the view from the front. */
  readonly rim: number;
  /** The way outboard on the drawing: 1 to the right, −1 to the left. */
  readonly out: 1 | -1;
}

export function cornerPlaces(
  { corner, anatomy }: CornerModel,
  view: View,
  unit: number,
): CornerPlaces {
  const sketch = { view, side: corner.side };
  const centre = flat(sketch, corner.wheelCentre);
  const out = outboardSign(corner.side);
  return {
    unit,
    anatomy,
    floor: 1000 * contactCentre(corner).z,
    centre,
    lower: flat(sketch, corner.pivots.lower),
    upper: flat(sketch, corner.pivots.upper),
    rim: centre.across + (out * anatomy.rimWidth) / 2,
    out,
  };
}
