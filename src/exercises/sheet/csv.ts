/** What may stand in a cell. Numbers are written as they are, texts are kept from being taken for formulas. */
export type Cell = string | number;

/** Signs by which a spreadsheet takes a text for a formula. */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * Rows as comma-separated values: lines end in CR LF; a text with a comma, a quote or a line end stands in quotes,
 * its own quotes doubled. A text that a spreadsheet would work out as a formula gets an apostrophe in front; numbers,
 * negative ones too, stay numbers.
 *
 * Source: RFC 4180 (from memory).
 */
export const csv = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(written).join(',')}\r\n`).join('');

function written(cell: Cell): string {
  if (typeof cell === 'number') {
    if (!Number.isFinite(cell)) throw new RangeError(`${cell} is no number for a table`);
    return String(cell);
  }
  // A space before the sign hides nothing: some programs trim first.
  const safe = FORMULA.test(cell.trimStart()) || FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
