import type { CornerModel } from '#core/car/car.ts';
import { heading, outboard } from '#core/corner.ts';
import { along, type Vector } from '#core/vector.ts';
import { measureMarks } from '../corner/measures.ts';
import { flat, path, type Sketch } from '../corner/sketch.ts';
import { standing, type Standing } from '../corner/standing.ts';
import { traceMarks } from '../corner/trace-marks.ts';
import type { Mark, Scene, Window } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import type { Setting } from '../setting.ts';
import { parkingDescription } from './describe-parking.ts';
import type { ParkingLook } from './parking-look.ts';

/** Lower than a view of the corner: the estimates stand below it. */
export const PARKING_PAPER = { width: 400, height: 236 } as const;

/** Height of the part of the road that is shown, in millimetres, and the least room above and below a wide print. */
const HEIGHT = 225;
const ROOM = 15;

/** Arrows of friction: how many on a ring, where the ring lies as a share of the print's width, and how long they are. */
const ARROWS = 8;
const RING = 1 / 3;
const ARROW_LENGTH = 30;

/** The print of a standing tyre on the road from above, the point that it is turned about, and the friction that resists. */
export function parkingScene(model: CornerModel, setting: Setting, look: ParkingLook): Scene {
  const now = standing(model, setting);
  const sketch: Sketch = { view: 'top', side: model.corner.side };
  const window = parkingWindow(model, sketch, look.width_mm);
  const { contactCentre, groundPoint } = now.geometry;
  const [contact, axis] = [flat(sketch, contactCentre), flat(sketch, groundPoint)];
  const pole = look.held ? axis : contact;
  return {
    title: `Print of the ${model.corner.side} front tyre, from above`,
    description: parkingDescription(now, setting, look),
    window,
    marks: [
      tread(sketch, now, model.anatomy.tyreWidth),
      {
        kind: 'circle',
        key: 'print',
        role: 'wheel',
        centre: contact,
        radius: look.width_mm / 2,
        line: 'outline',
        filled: true,
      },
      ...traceMarks('contact', sketch, now, model, setting),
      ...frictionArrows(contact, pole, look.width_mm),
      ...measureMarks('scrubRadius', {
        sketch,
        standing: now,
        window,
        units: look.units,
        guesses: {},
      }),
      { kind: 'spot', key: 'contact-centre', role: 'wheel', at: contact },
      { kind: 'spot', key: 'ground-point', role: 'axis', at: axis },
      {
        kind: 'turn',
        key: 'twist',
        role: 'lever',
        centre: pole,
        radius: 19,
        from: -0.9,
        sweep: 4.6,
      },
      { kind: 'label', key: 'axis-name', role: 'axis', at: axis, text: 'axis at the road' },
      {
        kind: 'label',
        key: 'print-name',
        role: 'wheel',
        at: point(contact.across, contact.up + look.width_mm / 2),
        text: 'print',
      },
    ],
  };
}

/** The window hangs on the car as it stands, with room outboard for spacers. */
function parkingWindow({ corner }: CornerModel, sketch: Sketch, width_mm: number): Window {
  const hub = flat(sketch, corner.wheelCentre);
  return {
    centre: point(hub.across + (corner.side === 'left' ? 18 : -18), hub.up),
    height: Math.max(HEIGHT, width_mm + 2 * ROOM),
  };
}

/** The tyre above its print: its two sides, past the edges of the paper. */
function tread(sketch: Sketch, { corner, geometry }: Standing, width_mm: number): Mark {
  const ahead = heading(corner);
  const out = outboard(corner);
  const at = (forward: number, side: number): Vector =>
    along(along(geometry.contactCentre, forward, ahead), (side * width_mm) / 2000, out);
  return path(
    [at(0.4, 1), at(0.4, -1), at(-0.4, -1), at(-0.4, 1)].map((p) => flat(sketch, p)),
    { key: 'tread', role: 'wheel', line: 'thin' },
  );
}

/**
 * The road's friction on bits of the print while the driver turns the wheel to the left: against the sliding,
 * and everywhere of the same size.
 */
function frictionArrows(contact: Point, pole: Point, width_mm: number): Mark[] {
  return Array.from({ length: ARROWS }, (_, i): Mark[] => {
    const angle = (2 * Math.PI * (i + 0.5)) / ARROWS;
    const at = point(
      contact.across + RING * width_mm * Math.cos(angle),
      contact.up + RING * width_mm * Math.sin(angle),
    );
    const [dx, dy] = [at.across - pole.across, at.up - pole.up];
    const away = Math.hypot(dx, dy);
    if (away < 1) return [];
    // Clockwise about the pole on a drawing where counterclockwise is to the left.
    const [ax, ay] = [(dy / away) * ARROW_LENGTH, (-dx / away) * ARROW_LENGTH];
    return [
      {
        kind: 'arrow',
        key: `friction-${i}`,
        role: 'force',
        from: point(at.across - ax / 2, at.up - ay / 2),
        to: point(at.across + ax / 2, at.up + ay / 2),
      },
    ];
  }).flat();
}
