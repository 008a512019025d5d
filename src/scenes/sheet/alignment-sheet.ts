import type { Car } from '#core/car/car.ts';
import { quantity } from '#core/quantities.ts';
import type { Guesses } from '../corner/measure-place.ts';
import type { Role } from '../marks.ts';
import { isChanged, unchanged, type Setting } from '../setting.ts';
import { bandOf, limitsText, sheetCell, sheetText, type Cell } from './cell.ts';
import { COLUMNS, LINE_IDS, LINE_ROLES, type Column, type LineId } from './lines.ts';
import { sheetReadings } from './readings.ts';

/** One line of a sheet. */
export interface SheetLine {
  readonly id: LineId;
  /** As on the sheet: `caster`. */
  readonly name: string;
  /** Which way is plus: `outboard`; empty where there is no sign. */
  readonly plus: string;
  /** What each wheel is allowed: `−1.25° to 0.25°`. */
  readonly limits: string;
  /** By how much the two may differ: `±0.50°`; empty for toe, which is added up. */
  readonly difference: string;
  readonly role: Role;
  readonly cells: Readonly<Record<Column, Cell>>;
}

/** A car’s alignment sheet, ready to be shown. */
export interface AlignmentSheet {
  readonly lines: readonly SheetLine[];
  /** Whether pale marks show how the car was set. */
  readonly changed: boolean;
  /** Whether dashed marks show what the reader predicted. */
  readonly guessed: boolean;
}

/** Short names, as sheets have them. */
const NAMES: Partial<Record<LineId, string>> = { caster: 'caster', inclination: 'inclination' };

/**
 * The alignment sheet of a car at a setting, held against the car’s own bands.
 *
 * @param guesses what the reader thought the left wheel would come to
 * @throws Error for a car without bands: a lesson that asks for such a sheet must not build
 */
export function alignmentSheet(car: Car, setting: Setting, guesses: Guesses = {}): AlignmentSheet {
  const { alignment } = car;
  if (!alignment) throw new Error(`the ${car.name} says nothing of its alignment`);
  const now = sheetReadings(car, setting);
  const changed = isChanged(setting);
  const before = changed ? sheetReadings(car, unchanged(setting)) : undefined;
  const cell = (id: LineId, column: Column): Cell =>
    sheetCell(id, column, alignment, now[column][id], {
      before: before?.[column][id],
      guess: column === 'left' ? guesses[id] : undefined,
    });
  return {
    lines: LINE_IDS.map((id) => ({
      id,
      name: NAMES[id] ?? quantity(id).name,
      plus: quantity(id).positive ?? '',
      limits: limitsText(bandOf(id, 'left', alignment)),
      difference: id === 'toe' ? '' : `±${sheetText(alignment[id].difference)}`,
      role: LINE_ROLES[id],
      cells: Object.fromEntries(COLUMNS.map((column) => [column, cell(id, column)])) as Record<
        Column,
        Cell
      >,
    })),
    changed,
    guessed: LINE_IDS.some((id) => guesses[id] !== undefined),
  };
}
