import * as other from '@e965/xlsx';
import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readXlsx } from '#exchange/xlsx/read-xlsx.js';
import { writeXlsx } from '#exchange/xlsx/write-xlsx.js';
import { unpack } from '#exchange/zip/unpack.js';
import { demoFile, dryRun, exported } from '../support/exchange/merged.js';

const head = (header: string) => ({ header, unit: '', meaning: '' });
const texts = [
  '=1+1',
  'x\u000by',
  'a\r\nb',
  '_x000D_',
  ' lead',
  'Ünï 😀',
  "'",
  '<&>"',
  'toString',
  '__proto__',
];

describe('a workbook', () => {
  test('that we write is read by another library as the same cells, none of them a formula', async () => {
    const rows = texts.map((text, place) => [text, place + 0.1, null]);
    const bytes = await writeXlsx([
      { name: 'care hours', columns: ['a', 'b', 'c'].map(head), rows },
    ]);
    const book = other.read(bytes);
    expect(book.SheetNames).toEqual(['care hours']);
    const sheet = book.Sheets['care hours']!;
    const cells = Object.entries(sheet).filter(([name]) => /^[A-Z]+\d+$/.test(name));
    expect(cells.some(([, cell]) => cell.f !== undefined)).toBe(false);
    const theirs = other.utils.sheet_to_json<unknown[]>(sheet, { header: 1, raw: true });
    expect(theirs[0]).toEqual(['a', 'b', 'c']);
    expect(theirs[1]).toEqual(["'=1+1", 0.1]);
    expect(theirs.slice(1).map((row) => row[1])).toEqual(rows.map((row) => row[1]));
    expect(theirs[6]?.[0]).toBe('Ünï 😀');
    expect(theirs.slice(-2).map((row) => row[0])).toEqual(['toString', '__proto__']);
    const parts = unpack(bytes);
    if (!parts.ok) throw new Error('it was packed a moment ago');
    const ours = await readXlsx(parts.files);
    expect(ours.ok && ours.tables[0]?.rows.map(({ cells: [a] }) => a)).toEqual(texts);
  });

  test('of the demo campus holds its tables and a dictionary of every column', async () => {
    const book = other.read(await exported({ file: demoFile(), format: 'xlsx' }));
    expect(book.SheetNames).toEqual(['sites', 'dictionary']);
    const rows = (name: string) =>
      other.utils.sheet_to_json<Record<string, unknown>>(book.Sheets[name]!);
    const headers = Object.keys(rows('sites')[0]!);
    const told = rows('dictionary').map((row) => row.column);
    expect(headers.filter((header) => !told.includes(header))).toEqual([]);
    expect(rows('dictionary').every((row) => row.unit !== '' && row.meaning !== '')).toBe(true);
    expect(rows('sites')[0]).toMatchObject({ id: 'TVU-01', area_sf: 5200, ph: 7.2 });
  });

  test('that another program wrote is taken, its own kinds of cells too', async () => {
    const book = other.utils.book_new();
    const sheet = other.utils.aoa_to_sheet([
      ['id', 'truck_access', 'walkers_per_day', 'soil'],
      ['TVU-01', true, 3200, 'loam'],
      [null, null, null, null],
    ]);
    other.utils.book_append_sheet(book, sheet, 'Sheet1');
    const bytes = new Uint8Array(other.write(book, { type: 'buffer', bookType: 'xlsx' }));
    const report = await dryRun(bytes, demoFile());
    expect(report).toMatchObject({ format: 'xlsx', canApply: true, counts: { changed: 1 } });
    expect(report.rows[0]?.changes).toEqual([
      { field: 'truck_access', from: 'no', to: 'yes' },
      { field: 'walkers_per_day', from: '3100', to: '3200' },
      { field: 'soil', from: 'clay loam', to: 'loam' },
    ]);
  });
});

describe('an archive is not opened', () => {
  const code = async (bytes: Uint8Array) => (await dryRun(bytes, demoFile())).problems[0]?.code;

  test('when it would fill a disk', async () => {
    const zeros = new Uint8Array(3_000_000);
    expect(await code(zipSync({ 'xl/workbook.xml': zeros }))).toBe('ARCHIVE-TOO-LARGE');
    expect(await code(zipSync({ 'bundle.json': zeros }))).toBe('ARCHIVE-TOO-LARGE');
  });

  test('nor more of it than may be, when it lies about its sizes', async () => {
    const bytes = Buffer.from(zipSync({ 'xl/workbook.xml': new Uint8Array(3_000_000) }));
    const central = bytes.indexOf('PK\u0001\u0002', 0, 'latin1');
    bytes.writeUInt32LE(1000, 22);
    bytes.writeUInt32LE(1000, central + 24);
    expect(await code(bytes)).toBe('ARCHIVE-TOO-LARGE');
  });

  test('when it holds too many parts', async () => {
    const parts = Array.from({ length: 501 }, (_, i) => [`${i}`, new Uint8Array(1)] as const);
    expect(await code(zipSync(Object.fromEntries(parts)))).toBe('ARCHIVE-TOO-LARGE');
  });

  test('when it is damaged, or nothing of ours', async () => {
    const whole = await exported({ file: demoFile(), format: 'bundle' });
    expect(await code(whole.slice(0, whole.length / 2))).toBe('ARCHIVE-DAMAGED');
    expect(await code(zipSync({ 'letter.txt': new Uint8Array(3) }))).toBe('BUNDLE-UNKNOWN');
    expect(await code(zipSync({ 'xl/workbook.xml': new Uint8Array(3) }))).toBe('XLSX-BROKEN');
  });
});
