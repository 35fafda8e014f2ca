import writeSheets from 'write-excel-file/node';
import { MOST_SHEET_CELL_CHARACTERS } from '../limits.js';
import { guarded } from '../table/formula-guard.js';
import { cellText, type Cell, type Table } from '../table/table.js';
import { toXstring, withFirstEscaped } from './xlsx-text.js';

/**
 * Tables as the sheets of one workbook (ISO/IEC 29500), headers bold and standing still. Numbers are
 * numbers; texts are texts and never formulas, and are guarded all the same, since a sheet is often
 * saved as CSV. A text longer than a cell can hold is left blank, which on the way back says nothing.
 */
export async function writeXlsx(tables: readonly Table[]): Promise<Uint8Array> {
  const sheets = tables.map((table) => ({
    sheet: table.name,
    stickyRowsCount: 1,
    columns: table.columns.map((_, place) => ({ width: widthOf(table, place) })),
    data: [
      table.columns.map(({ header }) => ({ value: header, fontWeight: 'bold' as const })),
      ...table.rows.map((row) => row.map(sheetCell)),
    ],
  }));
  return new Uint8Array(await writeSheets(sheets).toBuffer());
}

/**
 * The writer looks a text up in a plain object, where every object's own `toString` and the like seem to
 * be there already: such a text is escaped, so that it is none of them.
 */
function sheetCell(cell: Cell) {
  if (typeof cell !== 'string') return cell;
  const value = toXstring(guarded(cell));
  if (value === '' || value.length > MOST_SHEET_CELL_CHARACTERS) return null;
  return { value: value in {} ? withFirstEscaped(value) : value, type: String };
}

const NARROWEST = 8;
const WIDEST = 60;

/** Characters that show most of a column. */
function widthOf({ columns, rows }: Table, place: number): number {
  const texts = [columns[place]?.header ?? '', ...rows.map((row) => cellText(row[place] ?? null))];
  const longest = texts.reduce((most, text) => Math.max(most, text.length), NARROWEST);
  return Math.min(longest, WIDEST) + 2;
}
