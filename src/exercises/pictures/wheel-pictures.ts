import type { Road } from '../kind.ts';
import { rounded } from '../phrase.ts';
import type { Rim, WheelMark, WheelPicture } from './part-pictures.ts';

/** What cannot be told from the right place, or lies off the paper, in millimetres. */
const LEAST_mm = 1.5;
const FARTHEST_mm = 165;

/** A wrong place beside the right one: of the whole wheel, or of one line of it. */
export function wrongPlace(
  right: Omit<WheelPicture, 'scene' | 'wrong'>,
  about: {
    readonly road: Road;
    /** Where a value puts it, in millimetres from the hub's face. */
    readonly at_mm: (value: number) => number;
    /** Where the measure begins. */
    readonly from_mm: number;
    /** Whether the rim goes along. */
    readonly rim?: Rim;
  },
): WheelPicture | undefined {
  const { road, at_mm, from_mm, rim } = about;
  const [wrong, answer] = [at_mm(road.value), at_mm(road.answer)];
  if (Math.abs(wrong - answer) < LEAST_mm || Math.abs(wrong) > FARTHEST_mm) return undefined;
  return {
    scene: 'wheel',
    ...right,
    wrong: { from_mm, ...(rim ? { wheel: { ...rim, middle_mm: wrong } } : { at_mm: wrong }) },
  };
}

/** A measure with its number, for the solution; in metres. */
export const toldMark = (of: WheelMark['of'], says: string, value: number): WheelMark => ({
  of,
  says: `${says} ${rounded(Math.abs(value), 'mm', 1).figure}`,
});
