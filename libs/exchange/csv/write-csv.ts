import { stringify } from 'csv-stringify/sync';
import { guarded } from '../table/formula-guard.js';
import type { Table } from '../table/table.js';

/**
 * A table as RFC 4180 has it: commas, CRLF, quotes doubled; UTF-8 with a byte-order mark, without
 * which common spreadsheets read accents wrongly. Texts that would run as formulas are guarded.
 */
export function writeCsv({ columns, rows }: Table): Uint8Array {
  const head = columns.map(({ header }) => header);
  const body = rows.map((row) =>
    row.map((cell) => (typeof cell === 'string' ? guarded(cell) : cell)),
  );
  const text = stringify([head, ...body], {
    record_delimiter: '\r\n',
    quoted_match: /[\r\n]|^\s|\s$/,
  });
  return new TextEncoder().encode(`\uFEFF${text}`);
}
