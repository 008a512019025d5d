import { shownAsZero } from '#core/display.ts';
import type { Mark } from '../marks.ts';
import { point } from '../plane.ts';
import { named, paperUnit, type MeasurePlace } from './measure-place.ts';
import { flat, path } from './sketch.ts';

/** Where the dimension stands beside the contact centre, and how far the old road reaches: in paper units. */
const BESIDE = 118;
const REACH = 150;

/**
 * How far the road has gone down or up under the tyre since it stood straight ahead: the old level dashed, the
 * distance between the two beside the tyre. The drawing holds the body still, so the road moves.
 */
export function liftMeasure({ sketch, standing, window, units }: MeasurePlace): Mark[] {
  const { geometry, lift } = standing;
  if (shownAsZero(lift, 'length', units)) return [];
  const contact = flat(sketch, geometry.contactCentre);
  const before = contact.up + 1000 * lift;
  const unit = paperUnit(window);
  const inboard = sketch.side === 'left' ? -1 : 1;
  const away = contact.across + inboard * BESIDE * unit;
  const level = path(
    [point(contact.across - REACH * unit, before), point(contact.across + REACH * unit, before)],
    { key: 'road-before', role: 'ground', line: 'hidden', closed: false },
  );
  const [from, to] = [point(away, before), point(away, contact.up)];
  return [
    level,
    {
      kind: 'dimension',
      key: 'lift',
      role: 'guide',
      quantity: 'lift',
      from,
      to,
      fromFoot: from,
      toFoot: to,
      text: named('lift', lift, units),
    },
  ];
}
