import type { Mark } from '../marks.ts';
import { point } from '../plane.ts';
import type { BearingPicture } from './bearing-picture.ts';

export interface BearingMark {
  readonly of: 'offset' | 'spread' | 'halfSpread' | 'fromInboard' | 'fromOutboard' | 'radius';
  readonly says: string;
}

export interface SidePush {
  readonly says: string;
  readonly inward: boolean;
}

export interface RowLoad {
  readonly row: 'outboard' | 'inboard';
  /** Of the wheel load; negative at the bottom. */
  readonly share: number;
  readonly says: string;
}

export const ROW_NAMES = { inboard: 'inboard row', outboard: 'outboard row' } as const;

/** How long the arrow of a wheel load is, and the longest that fits, in millimetres of the drawing. */
const LOAD = 32;
const LONGEST = 72;
/** Of the rows: where the balls' outsides are, and where the dimensions stand. */
const OUTSIDE = 36;
const BELOW_ROWS = -44;

export const loadMarks = (says: string, across: number, foot: number): readonly Mark[] => [
  {
    ...{ kind: 'arrow', key: 'load', role: 'force' },
    ...{ from: point(across, foot - LOAD), to: point(across, foot) },
  },
  { kind: 'label', key: 'load-name', role: 'force', at: point(across, foot), text: says },
];

export function sideMarks(
  { says, inward }: SidePush,
  across: number,
  foot: number,
  onRoad: boolean,
  wrong = false,
): readonly Mark[] {
  const long = onRoad ? 75 : 40;
  const up = foot + (onRoad ? 6 : -20) + (wrong ? 26 : 0);
  const tail = point(across + (inward ? long : -long), up);
  const pen = { role: 'force', ...(wrong && { wrong }) } as const;
  const key = wrong ? 'wrong-side' : 'side';
  return [
    { ...pen, kind: 'arrow', key, from: tail, to: point(across, up) },
    { ...pen, kind: 'label', key: `${key}-name`, at: tail, text: says },
  ];
}

/** What the outer rings do to a row: from above onto its top, or from below. */
export function rowLoadMarks(
  { row, share, says }: RowLoad,
  half: number,
  wrong = false,
): readonly Mark[] {
  const across = (row === 'outboard' ? half : -half) + (wrong ? 9 : 0);
  const sign = share < 0 ? -1 : 1;
  const length = Math.min(LONGEST, Math.max(10, LOAD * Math.abs(share)));
  const to = point(across, sign * OUTSIDE);
  const from = point(across, sign * (OUTSIDE + length));
  const pen = { role: 'force', ...(wrong && { wrong }) } as const;
  const key = `${wrong ? 'wrong-' : ''}row-${row}`;
  return [
    { ...pen, kind: 'arrow', key, from, to },
    ...(says === ''
      ? []
      : [{ ...pen, kind: 'label', key: `${key}-name`, at: from, text: says } as const]),
  ];
}

/** A distance along the spin axis or up to it; a wrong one on a line of its own. */
export function bearingDimension(
  { of, says }: BearingMark,
  { spread_mm, radius_mm }: BearingPicture,
  offset_mm: number,
  wrong = false,
): Mark {
  const half = spread_mm / 2;
  const pen = {
    kind: 'dimension',
    role: 'guide',
    text: says,
    key: wrong ? `wrong-${of}` : of,
    ...(wrong && { wrong }),
  } as const;
  if (of === 'radius') {
    const across = offset_mm + 130 + (wrong ? 34 : 0);
    const [low, high] = [point(offset_mm, -(radius_mm ?? 0)), point(offset_mm, 0)];
    return {
      ...{ ...pen, from: low, to: high },
      ...{ fromFoot: point(across, low.up), toFoot: point(across, 0) },
    };
  }
  const [from, to] = {
    offset: [0, offset_mm],
    spread: [-half, half],
    halfSpread: [0, offset_mm < 0 ? -half : half],
    fromInboard: [-half, offset_mm],
    fromOutboard: [half, offset_mm],
  }[of] as [number, number];
  const isSpread = of === 'spread' || of === 'halfSpread';
  const up = (isSpread ? BELOW_ROWS : 62) + (wrong ? (isSpread ? -14 : 16) : 0);
  return {
    ...{ ...pen, from: point(from, 0), to: point(to, 0) },
    ...{ fromFoot: point(from, up), toFoot: point(to, up) },
  };
}
