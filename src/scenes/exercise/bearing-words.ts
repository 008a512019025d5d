import type { BearingMark, RowLoad, SidePush } from './bearing-marks.ts';
import type { BearingPicture } from './bearing-picture.ts';

export function bearingWords(picture: BearingPicture): string {
  const { offset_mm, before_mm, spread_mm, radius_mm, measures, load, side, rows, wrong } = picture;
  return [
    `The spin axis lies level, with the inboard row at the left and the outboard row at the right. The middle of the wheel runs upright ${where(offset_mm, spread_mm)}.`,
    ...(radius_mm === undefined ? [] : ['The tyre stands on the road below.']),
    ...(before_mm === undefined ? [] : ['Pale: where it ran before.']),
    ...(load === undefined
      ? []
      : [`Up along it goes the ${/\d/.test(load) ? `wheel load: ${load}` : load}.`]),
    ...(side ? [`${pushed(side)}.`] : []),
    ...measures.map((one) => `${measured(one)}.`),
    ...(rows ?? []).map((one) => `${carried(one)}.`),
    ...(wrong ? [`Dashed is the road that was taken: ${taken(wrong, picture).join('; ')}.`] : []),
  ].join(' ');
}

function where(offset_mm: number, spread_mm: number): string {
  if (Math.abs(offset_mm) < 0.05) return 'through the middle between them';
  const side = offset_mm > 0 ? 'outboard' : 'inboard';
  return Math.abs(offset_mm) > spread_mm / 2
    ? `beyond the ${side} row`
    : `between them, nearer to the ${side} one`;
}

const pushed = ({ says, inward }: SidePush): string =>
  `From the side the road pushes ${inward ? 'toward' : 'away from'} the car: ${says}`;

const FROM: Readonly<Record<BearingMark['of'], string>> = {
  offset: 'From the middle of the rows',
  spread: 'From row to row',
  halfSpread: 'From the middle to one row',
  fromInboard: 'From the inboard row to the middle of the wheel',
  fromOutboard: 'From the outboard row to the middle of the wheel',
  radius: 'From the road to the spin axis',
};

const measured = ({ of, says }: BearingMark): string => `${FROM[of]}: ${says}`;

const carried = ({ row, share, says }: RowLoad): string =>
  `The ${row} row is pressed at the ${share < 0 ? 'bottom' : 'top'}${says === '' ? '' : `: ${says}`}`;

function taken(
  { offset_mm, measures = [], rows = [], side }: NonNullable<BearingPicture['wrong']>,
  right: BearingPicture,
): readonly string[] {
  return [
    ...(offset_mm === undefined
      ? []
      : [`the middle of the wheel ${where(offset_mm, right.spread_mm)}`]),
    ...measures.map(measured),
    ...rows.map((one) => {
      const same = right.rows?.find(({ row }) => row === one.row);
      const more = same && Math.abs(one.share) > Math.abs(same.share) ? 'more' : 'less';
      return `${carried(one)}${same && one.share !== -same.share ? `, ${more} than it is` : ''}`;
    }),
    ...(side ? [pushed(side)] : []),
  ];
}
