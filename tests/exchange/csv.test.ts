import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { readCsv } from '#exchange/csv/read-csv.js';
import { writeCsv } from '#exchange/csv/write-csv.js';
import { decodeText } from '#exchange/reading/decode-text.js';
import { guarded } from '#exchange/table/formula-guard.js';

function cellsOf(text: string): string[][] {
  const reading = readCsv(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return [[...reading.table.headers], ...reading.table.rows.map(({ cells }) => [...cells])];
}

/** RFC 4180, section 2, by the number of its rule; typed from the document. */
const RFC_4180: readonly (readonly [rule: string, text: string, cells: string[][]])[] = [
  [
    '1',
    'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '2',
    'aaa,bbb,ccc\r\nzzz,yyy,xxx',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '3',
    'field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
    [
      ['field_name', 'field_name', 'field_name'],
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '5',
    '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '6',
    '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
    [
      ['aaa', 'b\r\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '7',
    'h,i,j\r\n"aaa","b""bb","ccc"',
    [
      ['h', 'i', 'j'],
      ['aaa', 'b"bb', 'ccc'],
    ],
  ],
];

describe('a CSV file', () => {
  test.each(RFC_4180)('is read as rule %s of RFC 4180, section 2, has it', (_, text, cells) => {
    expect(cellsOf(text)).toEqual(cells);
  });

  test.each(['utf-8-bom-sample.csv', 'sample-header.csv', 'verylong-sample.csv'])(
    'from outside is read as its own library reads it: %s',
    (name) => {
      const bytes = readFileSync(`node_modules/papaparse/tests/${name}`);
      const decoding = decodeText(bytes);
      const text = decoding.ok ? decoding.text : '';
      const theirs = Papa.parse<string[]>(text, { skipEmptyLines: true }).data;
      const [headers = [], ...rows] = cellsOf(text);
      expect(headers).toEqual(theirs[0]?.map((header) => header.trim()));
      expect(rows).toEqual(theirs.slice(1).filter((row) => row.some((cell) => cell.trim() !== '')));
    },
  );

  const cell = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 12 }),
    fc.constantFrom('a,b', 'a"b', 'a\nb', 'a\rb', '=1+1', ' lead', 'trail ', "'"),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.constant(null),
  );
  const rows = fc.array(fc.tuple(cell, cell, fc.constant('end')), { maxLength: 6 });
  const columns = ['a', 'b', 'c'].map((header) => ({ header, unit: '', meaning: '' }));

  test('that we write is read by another library and by us as the same cells', () => {
    fc.assert(
      fc.property(rows, (given) => {
        const text = new TextDecoder().decode(writeCsv({ name: 't', columns, rows: given }));
        const out = given.map((row) =>
          row.map((c) => (typeof c === 'string' ? guarded(c) : String(c ?? ''))),
        );
        const theirs = Papa.parse<string[]>(text, {
          skipEmptyLines: true,
          delimiter: ',',
          newline: '\r\n',
        });
        expect(theirs.errors).toEqual([]);
        expect(theirs.data.slice(1)).toEqual(out);
        const ours = given.map((row) => row.map((c) => String(c ?? '')));
        expect(cellsOf(text).slice(1)).toEqual(ours);
      }),
    );
  });

  test('begins with a byte-order mark and ends its lines as the standard has it', () => {
    const bytes = writeCsv({ name: 't', columns, rows: [['x', 1, null]] });
    expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(new TextDecoder().decode(bytes)).toBe('a,b,c\r\nx,1,\r\n');
  });
});
