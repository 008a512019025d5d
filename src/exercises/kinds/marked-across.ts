import { QUANTITIES } from '#core/quantities.ts';
import { markedLength } from '../marked-length.ts';
import { cornerAtRoad } from '../paper/corner.ts';

/** Lengths between axis and wheel in the front view: which is which, and how long. */
export const markedAcross = markedLength({
  id: 'marked-across',
  title: 'Five lengths from the front',
  lesson: 'at-the-wheel-centre',
  view: 'front',
  given: QUANTITIES.scrubRadius,
  wanted: QUANTITIES.spindleOffset,
  givenMeasure: 'scrubRadius',
  wantedMeasure: 'spindleOffset',
  givenAt: 'at the road',
  wantedAt: 'at the height of the wheel centre',
  leans: 'inboard',
  corner: (scrubRadius, inclination, loadedRadius) =>
    cornerAtRoad({ scrubRadius, inclination, loadedRadius }),
  offsets: [6, 32],
  leans_deg: [9, 15],
});
