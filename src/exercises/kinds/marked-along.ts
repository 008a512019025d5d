import { QUANTITIES } from '#core/quantities.ts';
import { markedLength } from '../marked-length.ts';
import { cornerAtCentre } from '../paper/corner.ts';

/** Lengths between axis and wheel in the side view: which is which, and how long. */
export const markedAlong = markedLength({
  id: 'marked-along',
  title: 'Five lengths from the side',
  lesson: 'at-the-road',
  view: 'side',
  given: QUANTITIES.casterOffsetAtCentre,
  wanted: QUANTITIES.trail,
  givenMeasure: 'casterOffsetAtCentre',
  wantedMeasure: 'trail',
  givenAt: 'at the height of the wheel centre',
  wantedAt: 'at the road',
  leans: 'rearward',
  corner: (casterOffset, caster, loadedRadius) =>
    cornerAtCentre({ casterOffset, caster, loadedRadius }),
  offsets: [6, 18],
  leans_deg: [4, 12],
});
