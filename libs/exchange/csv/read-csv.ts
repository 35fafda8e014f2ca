import { CsvError, parse } from 'csv-parse/sync';
import { anError, aWarning, type Problem } from '#domain/problem.js';
import { MOST_CELL_CHARACTERS, MOST_ROWS } from '../limits.js';
import { unguarded } from '../table/formula-guard.js';
import type { ReadTable } from '../table/table.js';

export type CsvReading =
  | { readonly ok: true; readonly table: ReadTable; readonly warnings: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads a table in the manner of RFC 4180. Line ends of any kind are taken, and so are semicolons and
 * tabs between the cells, which are told, since decimal commas go along with them.
 */
export function readCsv(text: string): CsvReading {
  const delimiter = delimiterOf(text);
  try {
    const records = parse(text, {
      bom: true,
      delimiter,
      relax_column_count: true,
      skip_empty_lines: true,
      max_record_size: MOST_CELL_CHARACTERS * 10,
      to: MOST_ROWS + 2,
    });
    if (records.length > MOST_ROWS + 1) return { ok: false, problems: [tooManyRows()] };
    const [headers = [], ...rows] = records;
    const table: ReadTable = {
      name: 'the table',
      headers: headers.map((header) => header.trim()),
      rows: rows
        .map((cells, place) => ({ number: place + 2, cells: cells.map(unguarded) }))
        .filter(({ cells }) => cells.some((cell) => cell.trim() !== '')),
    };
    return { ok: true, table, warnings: delimiter === ',' ? [] : [otherDelimiter(delimiter)] };
  } catch (error) {
    if (error instanceof CsvError) return { ok: false, problems: [brokenCsv(error)] };
    throw error;
  }
}

/** What stands most often in the first line; a comma where nothing does. */
function delimiterOf(text: string): string {
  const first = /^[^\r\n]*/.exec(text)?.[0] ?? '';
  const count = (mark: string): number => first.split(mark).length - 1;
  return [';', '\t'].reduce((best, mark) => (count(mark) > count(best) ? mark : best), ',');
}

function otherDelimiter(delimiter: string): Problem {
  const name = delimiter === ';' ? 'semicolons' : 'tabs';
  const place = { code: 'CSV-DELIMITER', record: 'the file', field: '', value: delimiter };
  return aWarning(place, [
    `The cells are set apart by ${name}, not commas: a spreadsheet set to another country does so.`,
    'It was read as it is; look for decimal commas, which are refused.',
  ]);
}

function tooManyRows(): Problem {
  const most = MOST_ROWS.toLocaleString('en-US');
  return anError({ code: 'IMPORT-TOO-MANY-ROWS', record: 'the file', field: '' }, [
    `The table has more than ${most} rows.`,
    `Give at most ${most} rows at a time.`,
  ]);
}

/** Rows are counted as a spreadsheet counts them; an open quote hides the ends of those after it. */
function brokenCsv({ code, records }: CsvError): Problem {
  const row = typeof records === 'number' ? `row ${records + 1}` : '';
  const place = { code: 'CSV-BROKEN', record: 'the file', field: row };
  const isOpen = code === 'CSV_QUOTE_NOT_CLOSED' || code === 'CSV_MAX_RECORD_SIZE';
  return anError(place, [
    isOpen ? `A quote in ${row} is never closed.` : `A quote in ${row} is out of place.`,
    'Quote a text as a whole; a quote within a quoted text is written twice.',
  ]);
}
