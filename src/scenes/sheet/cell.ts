import { degrees } from '#core/angle.ts';
import type { Alignment, Band } from '#core/car/alignment.ts';
import type { Quantity } from '#core/quantities.ts';
import { writeDegrees } from '#core/write-number.ts';
import { cellQuantity, type Column, type LineId } from './lines.ts';
import { scaleOf, type OtherMarks, type Scale } from './scale.ts';

/** One value of a sheet, held against what is allowed. */
export interface Cell {
  /** With two decimals and its sign: `−0.50°`. */
  readonly value: string;
  /** The same with its direction in words, and how it stands to the band: for reading aloud. */
  readonly words: string;
  /** How far past what is allowed: `0.65°`; empty inside. */
  readonly outside: string;
  readonly scale: Scale;
}

/** Sheets write hundredths of a degree, and what is written decides. */
const DECIMALS = 2;

/** An angle as a sheet writes it. */
export const sheetText = (angle: number): string => writeDegrees(angle, DECIMALS);

/** Size and direction as a sheet’s angle is said: `0.50° inboard`. */
export function sheetWords(angle: number, { positive, negative }: Quantity): string {
  const word = angle > 0 ? positive : negative;
  const hasWay = word !== undefined && hundredths(angle) !== 0;
  return hasWay ? `${sheetText(Math.abs(angle))} ${word}` : sheetText(angle);
}

/** The cell of a line and column; values in radians. */
export function sheetCell(
  id: LineId,
  column: Column,
  alignment: Alignment,
  value: number,
  others: OtherMarks,
): Cell {
  const band = bandOf(id, column, alignment);
  const limits = limitsText(band);
  const past = hundredthsPast(band, value);
  const outside = past === 0 ? '' : `${(past / 100).toFixed(DECIMALS)}°`;
  const said = sheetWords(value, cellQuantity(id, column));
  return {
    value: sheetText(value),
    words: past === 0 ? `${said}, within ${limits}` : `${said}, outside ${limits} by ${outside}`,
    outside,
    scale: scaleOf(band, value, others),
  };
}

/** What a column allows: of toe, the pair may have what both wheels may; all else may differ either way. */
export function bandOf(id: LineId, column: Column, alignment: Alignment): Band {
  if (column !== 'pair') return alignment[id];
  if (id === 'toe') return { least: 2 * alignment.toe.least, most: 2 * alignment.toe.most };
  const { difference } = alignment[id];
  return { least: -difference, most: difference };
}

/** A band as a sheet writes it: `−1.25° to 0.25°`. */
export const limitsText = ({ least, most }: Band): string =>
  `${sheetText(least)} to ${sheetText(most)}`;

const hundredths = (angle: number): number => Math.round(100 * degrees(angle));

function hundredthsPast({ least, most }: Band, value: number): number {
  const at = hundredths(value);
  return Math.max(0, hundredths(least) - at, at - hundredths(most));
}
