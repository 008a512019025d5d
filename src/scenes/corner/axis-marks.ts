import { atHeight } from '#core/line.ts';
import { along } from '#core/vector.ts';
import type { Mark } from '../marks.ts';
import { flat, path, type Sketch } from './sketch.ts';
import type { Standing } from './standing.ts';

/** The steering axis from below the road to above the upper pivot, or pale for the state before. */
export function axisLine(sketch: Sketch, { corner, geometry }: Standing, before = false): Mark {
  const bottom = atHeight(corner.axis, geometry.contactCentre.z - 0.07);
  const top = along(corner.pivots.upper, 0.09, corner.axis.direction);
  return path([flat(sketch, bottom), flat(sketch, top)], {
    key: before ? 'axis-before' : 'axis',
    role: 'axis',
    closed: false,
    line: before ? 'thin' : 'heavy-chain',
    before,
  });
}

/** Both pivots as ringed points, and where the axis meets the road. */
export function axisSpots(sketch: Sketch, { corner, geometry }: Standing): Mark[] {
  return [
    {
      kind: 'spot',
      key: 'lower-pivot',
      role: 'axis',
      at: flat(sketch, corner.pivots.lower),
      ringed: true,
    },
    {
      kind: 'spot',
      key: 'upper-pivot',
      role: 'axis',
      at: flat(sketch, corner.pivots.upper),
      ringed: true,
    },
    { kind: 'spot', key: 'ground-point', role: 'axis', at: flat(sketch, geometry.groundPoint) },
  ];
}

/** The wheel's centre lines: upright through wheel centre and contact centre, and the spin axis across. */
export function wheelCentreLines(sketch: Sketch, { corner, geometry }: Standing): Mark[] {
  const { wheelCentre, spin, loadedRadius } = corner;
  const contact = geometry.contactCentre;
  const upward = {
    x: wheelCentre.x - contact.x,
    y: wheelCentre.y - contact.y,
    z: wheelCentre.z - contact.z,
  };
  const reach = (loadedRadius + 0.06) / loadedRadius;
  const line = { role: 'wheel', closed: false, line: 'chain' } as const;
  const marks: Mark[] = [
    path(
      [flat(sketch, along(wheelCentre, 0.14, spin)), flat(sketch, along(wheelCentre, -0.14, spin))],
      { key: 'spin-axis', ...line },
    ),
    { kind: 'spot', key: 'wheel-centre', role: 'wheel', at: flat(sketch, wheelCentre) },
    { kind: 'spot', key: 'contact-centre', role: 'wheel', at: flat(sketch, contact) },
  ];
  if (sketch.view !== 'top') {
    marks.unshift(
      path(
        [
          flat(sketch, along(wheelCentre, reach + 0.1, upward)),
          flat(sketch, along(contact, -0.16, upward)),
        ],
        { key: 'wheel-plane', ...line },
      ),
    );
  }
  return marks;
}
