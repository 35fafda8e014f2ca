import type { Model } from './model.js';

/**
 * Names that every reader of model files takes: `c0`, `c1`, ... for columns and `r0`, `r1`, ... for
 * rows, by place in the model. Labels hold spaces and more, so they go into comments.
 */
export function columnName(column: number): string {
  return `c${column}`;
}

export function rowName(row: number): string {
  return `r${row}`;
}

/** A row as files have it: with one sense and one side. */
export interface FileRow {
  readonly name: string;
  readonly row: number;
  readonly sense: 'E' | 'L' | 'G';
  readonly side: number;
}

/**
 * The rows of a file. A row between two bounds becomes two, `r5lo` and `r5hi`: not every reader takes
 * both in one, and a range as their difference would be rounded. Rows without bounds are left out.
 */
export function fileRows({ rowLabels, rowLower, rowUpper }: Model): FileRow[] {
  return rowLabels.flatMap((_, row): FileRow[] => {
    const low = rowLower[row] ?? -Infinity;
    const high = rowUpper[row] ?? Infinity;
    const name = rowName(row);
    if (low === high) return [{ name, row, sense: 'E', side: low }];
    const both = low > -Infinity && high < Infinity;
    return [
      { name: both ? `${name}lo` : name, row, sense: 'G' as const, side: low },
      { name: both ? `${name}hi` : name, row, sense: 'L' as const, side: high },
    ].filter(({ side }) => Number.isFinite(side));
  });
}

/** One line of comment for each column and row: its name in the file, then its label. */
export function legend(model: Model, mark: string): string[] {
  return [
    ...model.variables.map(
      ({ column, label }) => `${mark} ${columnName(column)} ${oneLine(label)}`,
    ),
    ...model.rowLabels.map((label, row) => `${mark} ${rowName(row)} ${oneLine(label)}`),
  ];
}

function oneLine(label: string): string {
  return label.replace(/[^\x20-\x7e]+/g, ' ');
}

/** The shortest decimal text that reads back as the same double. */
export function numberText(value: number): string {
  return Object.is(value, -0) ? '0' : String(value);
}

/** Terms of a row, in the order of the model. */
export function rowTerms({ rows }: Model, row: number): { column: number; value: number }[] {
  const [from, to] = [rows.starts[row] ?? 0, rows.starts[row + 1] ?? 0];
  return Array.from({ length: to - from }, (_, k) => ({
    column: rows.columns[from + k] ?? 0,
    value: rows.values[from + k] ?? 0,
  }));
}
