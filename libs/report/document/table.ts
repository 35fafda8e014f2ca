import type { Inline } from './inline.js';

/**
 * A table with a caption and one header row, which is repeated on every page the table reaches.
 * Every row has as many cells as there are columns. Rows do not split across pages.
 */
export interface Table {
  readonly kind: 'table';
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** Whether the first cell of each row names the row. */
  readonly rowHeaders: 'first-column' | 'none';
  /** `compact` suits long tables of numbers, such as the data of a figure; `dense` those of a page. */
  readonly density: 'regular' | 'compact' | 'dense';
  /** Source or remark below the last row. */
  readonly note?: Inline;
}

/** `weight` is the column's share of the width, more than 0; long words may widen it. */
export interface Column {
  readonly header: string;
  readonly align: 'left' | 'center' | 'right';
  readonly weight: number;
}

/** `total` is set off by a rule above it and bold type. */
export interface Row {
  readonly cells: readonly Inline[];
  readonly emphasis: 'plain' | 'total';
}

/** A left-aligned column of words. */
export function textColumn(header: string, weight = 2): Column {
  return { header, align: 'left', weight };
}

/** A right-aligned column of numbers. */
export function numberColumn(header: string, weight = 1): Column {
  return { header, align: 'right', weight };
}

export function row(...cells: readonly Inline[]): Row {
  return { cells, emphasis: 'plain' };
}

export function totalRow(...cells: readonly Inline[]): Row {
  return { cells, emphasis: 'total' };
}

/** What a table needs at least; the rest has the defaults of `table`. */
export type TableParts = Pick<Table, 'caption' | 'columns' | 'rows'> &
  Partial<Pick<Table, 'rowHeaders' | 'density' | 'note'>>;

/** A table whose first column names its rows, in regular density, unless told otherwise. */
export function table(parts: TableParts): Table {
  return { kind: 'table', rowHeaders: 'first-column', density: 'regular', ...parts };
}
