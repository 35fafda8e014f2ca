import { zipSync } from 'fflate';
import readSheets from 'read-excel-file/node';
import { anError, type Problem } from '#domain/problem.js';
import { MOST_ROWS } from '../limits.js';
import { unguarded } from '../table/formula-guard.js';
import type { ReadTable } from '../table/table.js';

export type XlsxReading =
  | { readonly ok: true; readonly tables: readonly ReadTable[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The sheets of a workbook that was unpacked before, so that the reader, which knows no limit, is
 * given parts of known size. Never runs a formula.
 */
export async function readXlsx(parts: ReadonlyMap<string, Uint8Array>): Promise<XlsxReading> {
  const bytes = zipSync(Object.fromEntries(parts), { level: 0 });
  const sheets = await readSheets(Buffer.from(bytes), { trim: false }).catch(() => undefined);
  if (sheets === undefined) return { ok: false, problems: [brokenXlsx()] };
  if (sheets.some(({ data }) => data.length > MOST_ROWS + 1)) {
    return { ok: false, problems: [tooManyRows()] };
  }
  return { ok: true, tables: sheets.map(({ sheet, data }) => tableOf(sheet, data)) };
}

function tableOf(name: string, data: readonly (readonly unknown[])[]): ReadTable {
  const [headers = [], ...rows] = data.map((row) => row.map(textOf));
  return {
    name,
    headers: headers.map((header) => header.trim()),
    rows: rows
      .map((cells, place) => ({
        number: place + 2,
        cells: headers.map((_, column) => unguarded(cells[column] ?? '')),
      }))
      .filter(({ cells }) => cells.some((cell) => cell.trim() !== '')),
  };
}

function textOf(cell: unknown): string {
  if (cell instanceof Date) return cell.toISOString().slice(0, 10);
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  return typeof cell === 'string' || typeof cell === 'number' ? String(cell) : '';
}

function brokenXlsx(): Problem {
  return anError({ code: 'XLSX-BROKEN', record: 'the file', field: '' }, [
    'The workbook cannot be read: it is damaged or locked by a password.',
    'Open it in a spreadsheet program and save it anew as .xlsx, without a password.',
  ]);
}

function tooManyRows(): Problem {
  const most = MOST_ROWS.toLocaleString('en-US');
  return anError({ code: 'IMPORT-TOO-MANY-ROWS', record: 'the file', field: '' }, [
    `A sheet has more than ${most} rows.`,
    `Give at most ${most} rows at a time.`,
  ]);
}
