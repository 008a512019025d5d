import type { Corner } from '#core/corner.ts';
import type { BodiesLook } from './bodies-look.ts';
import { BODIES_CASES } from './cases.ts';
import { deedName, sizeText, wayText } from './deed-words.ts';
import type { Deed } from './deeds.ts';
import { isApart } from './shown-deeds.ts';

/** What the drawing shows, in words and from the same numbers. */
export function bodiesDescription(
  corner: Corner,
  deeds: readonly Deed[],
  look: BodiesLook,
): string {
  const said = (body: Deed['body'], start: string): string[] => {
    const done = deeds
      .filter((deed) => deed.body === body)
      .map((deed) => {
        const size = sizeText(corner, deed, look.units);
        return `${deedName(deed)}, ${size} ${wayText(corner, deed)}`;
      });
    return done.length === 0 ? [] : [`${start}: ${done.join('; ')}.`];
  };
  const drawn = isApart(look) ? 'drawn apart' : 'drawn together';
  return [
    `The ${corner.side} front wheel and its carrier seen from outside, ${drawn}.`,
    `${BODIES_CASES[look.which].title}.`,
    ...(deeds.length === 0 ? ['Nothing acts along the car.'] : []),
    ...said('wheel', 'On the wheel'),
    ...said('carrier', 'On the carrier'),
  ].join(' ');
}
