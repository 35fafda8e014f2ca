/** One cell: a text, a number, or nothing. Flags are written as `yes` and `no`. */
export type Cell = string | number | null;

/** One column as the dictionary tells it. */
export interface ColumnHead {
  /** Lower case with its unit as an ending, for example `area_sf`. */
  readonly header: string;
  /** Unit, or what kind of text stands there. */
  readonly unit: string;
  readonly meaning: string;
}

/** A table with a row of headers over its rows, every row as long as the headers. */
export interface Table {
  /** Lower-case name of the sheet, for example `care hours`. */
  readonly name: string;
  readonly columns: readonly ColumnHead[];
  readonly rows: readonly (readonly Cell[])[];
}

/** A table as it was read: texts only, blank cells as empty texts. */
export interface ReadTable {
  readonly name: string;
  readonly headers: readonly string[];
  readonly rows: readonly ReadRow[];
}

export interface ReadRow {
  /** Row as a spreadsheet counts it: the headers are row 1. */
  readonly number: number;
  readonly cells: readonly string[];
}

/** A cell as the text that a file without types holds. Numbers read back to the same number. */
export function cellText(cell: Cell): string {
  return cell === null ? '' : String(cell);
}

/**
 * A text without what spreadsheets and XML do not keep: kinds of line ends, control characters, halves
 * of a character. Two texts that differ in nothing else are taken as the same.
 */
export function keptText(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Cs}/gu, '');
}
