import type { OnBearing } from '../paper/bearing.ts';
import { given, mm } from '../phrase.ts';
import type { AxlePicture, BearingPicture } from './picture.ts';

/** Both rows with what an exercise gives of them: offset, spread and wheel load. Says nothing that is asked for. */
export const rowsAsGiven = ({
  offset_mm,
  spread_mm,
  load_N,
}: Pick<OnBearing, 'offset_mm' | 'spread_mm' | 'load_N'>): BearingPicture => ({
  scene: 'bearing',
  offset_mm,
  spread_mm,
  measures: [
    { of: 'offset', says: mm(Math.abs(offset_mm)).figure },
    { of: 'spread', says: mm(spread_mm).figure },
  ],
  load: given(load_N, 'N').figure,
});

/** Both front wheels from above, braked as an exercise gives it. */
export const brakesAsGiven = (left_N: number, right_N: number, scrub_mm: number): AxlePicture => ({
  scene: 'axle',
  scrub_mm,
  left: { says: given(left_N, 'N').figure, ahead: -left_N },
  right: { says: given(right_N, 'N').figure, ahead: -right_N },
});
