import type { Rows } from '#core/bearing/rows.ts';
import { path } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import {
  contactDirection,
  elementCentre,
  loadedHalf,
  ROW_SIGNS,
  type BearingSizes,
  type Placing,
} from './bearing-sizes.ts';

/** How far a contact line goes on beyond the ball. */
const BEYOND = 17;

/** Less than this loads nothing that a drawing should show, in newtons. */
export const UNLOADED = 0.5;

/**
 * The contact lines of both rows, above and below, with the pressure centres where they meet the spin axis. The
 * line that carries the row's load is heavy.
 */
export function contactLines(sizes: BearingSizes, radial: Rows<number>, place: Placing): Mark[] {
  const marks: Mark[] = [];
  for (const name of ['outboard', 'inboard'] as const) {
    const row = ROW_SIGNS[name];
    const centre = place(row * sizes.halfSpread, 0);
    const quantity = name === 'outboard' ? 'outboardRadial' : 'inboardRadial';
    for (const half of [1, -1] as const) {
      const [out, up] = elementCentre(sizes, row, half);
      const [stepOut, stepUp] = contactDirection(sizes, row, half);
      const at = (way: number) => place(out + way * stepOut, up + way * stepUp);
      const side = half > 0 ? 'above' : 'below';
      const line = { role: 'bearing', closed: false } as const;
      marks.push(
        path([centre, at(sizes.element + BEYOND)], {
          key: `contact-${name}-${side}`,
          ...line,
          line: 'chain',
        }),
      );
      const load = radial[name];
      if (Math.abs(load) > UNLOADED && loadedHalf(load) === half) {
        const carrying = path([centre, at(sizes.element + 6)], {
          key: `carrying-${name}`,
          ...line,
          line: 'heavy',
        });
        marks.push({ ...carrying, quantity });
      }
    }
    marks.push({
      kind: 'spot',
      key: `pressure-centre-${name}`,
      role: 'bearing',
      at: centre,
      ringed: true,
      quantity: 'pressureCentreSpread',
    });
  }
  return marks;
}
