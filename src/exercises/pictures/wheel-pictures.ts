import type { Road } from '../kind.ts';
import { given, mm, rounded, si } from '../phrase.ts';
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

/** A rim on its hub, upright; it stands as far inboard as it has inset. */
export const rimOf = (width_in: number, inset_mm: number): Rim => ({
  middle_mm: -inset_mm,
  width_mm: 1000 * si(width_in, 'in'),
});

interface RimAtStrut {
  readonly width_in: number;
  readonly inset_mm: number;
  readonly clearance_mm: number;
}

/** Pictures of a rim that clears a strut by so much, as it is given, and of another one in its place. */
export function rimsAtStrut({ width_in, inset_mm, clearance_mm }: RimAtStrut, wheel: Rim) {
  const before = rimOf(width_in, inset_mm);
  const strut_mm = before.middle_mm - before.width_mm / 2 - clearance_mm;
  return {
    given: {
      ...{ scene: 'wheel', wheel: before, strut_mm },
      measures: [
        { of: 'width', says: given(width_in, 'in').figure },
        { of: 'inset', says: mm(inset_mm).figure },
        { of: 'clearance', says: mm(clearance_mm).figure },
      ],
    } satisfies WheelPicture,
    after: { ...{ scene: 'wheel', before, wheel, strut_mm }, measures: [] } satisfies WheelPicture,
  };
}

/** A measure with its number, for the solution; in metres. */
export const toldMark = (of: WheelMark['of'], says: string, value: number): WheelMark => ({
  of,
  says: `${says} ${rounded(Math.abs(value), 'mm', 1).figure}`,
});
