import type { ReadTable } from '../table/table.js';
import type { SiteColumn } from './site-columns.data.js';

/** What one record of a file says of a site: texts by column, blank ones left out. */
export interface SiteRow {
  readonly place: string;
  readonly cells: ReadonlyMap<SiteColumn, string>;
  /** More cells than headers: the row has slipped. */
  readonly slipped: boolean;
  /** A shape that is read from the file itself and not from a text. */
  readonly boundary?: unknown;
}

export function siteRowsOf(
  table: ReadTable,
  columns: readonly (SiteColumn | undefined)[],
): SiteRow[] {
  return table.rows.map(({ number, cells }) => ({
    place: `row ${number}`,
    cells: new Map(
      columns.flatMap((column, place) => {
        const text = cells[place] ?? '';
        return column === undefined || text.trim() === '' ? [] : [[column, text] as const];
      }),
    ),
    slipped: cells.length > columns.length,
  }));
}
