import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { smallCampus } from '../support/cli/small-campus.js';
import { demoFile, dryRun, exported } from '../support/exchange/merged.js';

interface Planted {
  readonly place: string;
  readonly record: string;
  readonly code: string;
  readonly field: string;
}

test('a table with 18 good rows and 20 planted mistakes tells each of them, and no other', async () => {
  const report = await dryRun(readFileSync('seeds/imports/sites-with-mistakes.csv'), demoFile());
  const expected = readFileSync('seeds/imports/sites-with-mistakes.expected.json', 'utf8');
  const errors = report.rows.flatMap(({ place, problems }) =>
    problems
      .filter(({ severity }) => severity === 'error')
      .map(({ code, field, record }) => ({ place, record, code, field })),
  );
  expect(errors).toEqual(JSON.parse(expected) as Planted[]);
  expect(report.counts).toEqual({ unchanged: 6, new: 6, changed: 6, removed: 0, rejected: 20 });
  expect(report).toMatchObject({ canApply: false, problems: [] });
  const remedies = report.rows.flatMap(({ problems }) => problems.map(({ remedy }) => remedy));
  expect(remedies.every((remedy) => remedy.length > 5)).toBe(true);
});

const small = smallCampus();
const utf16 = (text: string) => Buffer.from(`\uFEFF${text}`, 'utf16le');

describe('a table is refused as a whole, with the likely cause', () => {
  test.each<[string, string | Uint8Array, string, string]>([
    ['has no headers', 'S-1,Name,5200\n', 'COLUMN-ID-MISSING', 'id'],
    ['gives areas in acres', 'id,area_acres\nS-1,0.2\n', 'COLUMN-UNIT', 'area_acres'],
    ['gives areas in square meters', 'id,area_m2\nS-1,480\n', 'COLUMN-UNIT', 'area_m2'],
    ['misspells a column', 'id,walker_per_day\nS-1,5\n', 'COLUMN-MISSPELLED', 'walker_per_day'],
    ['has a column twice', 'id,name,name\nS-1,a,b\n', 'COLUMN-TWICE', 'name'],
    ['has no rows', 'id,name\n', 'IMPORT-NO-ROWS', ''],
    ['is empty', ' \n', 'IMPORT-EMPTY', ''],
    ['never closes a quote', 'id,name\nS-1,"open\nS-2,b\n', 'CSV-BROKEN', 'row 2'],
    ['has a quote within a text', 'id,name\nS-1,a\nS-2,b"c"\n', 'CSV-BROKEN', 'row 3'],
    [
      'is in an older encoding',
      Buffer.from('id,name\nS-1,Caf\xe9\n', 'latin1'),
      'FILE-ENCODING',
      '',
    ],
    ['is a workbook of the old kind', Buffer.from('d0cf11e0a1b11ae1', 'hex'), 'XLSX-OLD', ''],
    ['is a plan’s own', 'fiscal_year,site,name,zone,build_type\n', 'IMPORT-WORKED-OUT', ''],
    ['is cut-off JSON', '{"type": "FeatureCollection", "features": [', 'FILE-NOT-JSON', ''],
    ['has too many rows', `id\n${'S-1\n'.repeat(5001)}`, 'IMPORT-TOO-MANY-ROWS', ''],
    ['is too large', new Uint8Array(25 * 1024 * 1024 + 1), 'IMPORT-TOO-LARGE', ''],
  ])('that %s', async (_, text, code, field) => {
    const report = await dryRun(text, small);
    expect(report).toMatchObject({ canApply: false, rows: [] });
    expect(report.problems.map((p) => ({ code: p.code, field: p.field }))).toContainEqual({
      code,
      field,
    });
  });
});

describe('a table is taken all the same', () => {
  test.each([
    ['with a byte-order mark', '\uFEFFid,name\r\nS-1,Renamed\r\n'],
    ['in UTF-16, as spreadsheets save it', utf16('id\tname\r\nS-1\tRenamed\r\n')],
    ['with semicolons between its cells', 'id;name\nS-1;Renamed\n'],
    ['with a column of its owner’s', 'id,name,my own remarks\nS-1,Renamed,x\n'],
    ['with its headers in other letters', 'ID,Name\nS-1,Renamed\n'],
  ])('%s', async (_, text) => {
    const report = await dryRun(text, small);
    expect(report).toMatchObject({ canApply: true, counts: { changed: 1 } });
    expect(report.rows[0]?.changes).toMatchObject([{ field: 'name', to: 'Renamed' }]);
  });
});

describe('a row', () => {
  const row = async (text: string, file: CampusFile = small) => (await dryRun(text, file)).rows[0]!;

  test('with a comma too many has most likely lost its quotes', async () => {
    const slipped = await row('id,name\nS-1,Hall, north\n');
    expect(slipped.problems[0]?.code).toBe('ROW-SLIPPED');
  });

  test('changes nothing where its cells are blank, and clears only what it says "none" of', async () => {
    const file = smallCampus(({ candidateSites: [site] }) => (site!.latest = 'FY2033'));
    expect(await row('id,latest_year,ph\nS-1,,\n', file)).toMatchObject({ outcome: 'unchanged' });
    expect((await row('id,latest_year\nS-1,none\n', file)).changes).toEqual([
      { field: 'latest_year', from: 'FY2033', to: '' },
    ]);
  });

  test('never clears a gate by leaving it out, only by naming it as passed', async () => {
    const file = smallCampus(({ candidateSites: [site] }) => {
      site!.gates = [
        { kind: 'utilities', status: 'unknown', note: '', bars: 'all', clearedBy: 'A locate.' },
      ];
    });
    const blank = await row('id,gates_passed,gates_failed,gates_unknown\nS-1,,,\n', file);
    expect(blank.outcome).toBe('unchanged');
    const passed = await row('id,gates_passed,gates_unknown\nS-1,utilities,\n', file);
    expect(passed.changes).toEqual([{ field: 'gates_passed', from: '', to: 'utilities' }]);
    const both = await row('id,gates_passed,gates_unknown\nS-1,utilities,utilities\n', file);
    expect(both.problems[0]?.code).toBe('GATE-NOT-ONE');
  });

  test('does not make a candidate of what is planted, nor the other way round', async () => {
    const moved = await row('id,stage\nS-1,existing\n');
    expect(moved.problems[0]?.code).toBe('SITE-STAGE-CHANGED');
  });
});

describe('a bundle', () => {
  test('of the campus as it was tells what has changed since, and what would go', async () => {
    const bytes = await exported({ file: small, format: 'bundle' });
    const now = smallCampus((file) => {
      file.candidateSites[0]!.name = 'Renamed since';
      file.standingCosts.push({
        ...{ id: 'new-cost', name: 'New', annualDollars: 1, escalation: 'wages' },
      });
    });
    const report = await dryRun(bytes, now);
    expect(report).toMatchObject({
      format: 'bundle',
      canApply: true,
      counts: { changed: 1, removed: 1 },
    });
    const named = report.rows.filter(({ outcome }) => outcome !== 'unchanged');
    expect(named.map(({ outcome, record }) => `${record} ${outcome}`)).toEqual([
      'site S-1 changed',
      'standing cost new-cost removed',
    ]);
  });

  test('of another campus is not put in the place of this one', async () => {
    const other = smallCampus((file) => (file.id = 'another'));
    const report = await dryRun(await exported({ file: other, format: 'bundle' }), small);
    expect(report.problems[0]?.code).toBe('IMPORT-OTHER-CAMPUS');
  });

  test('is the same byte for byte each time', async () => {
    const [one, two] = await Promise.all(
      [1, 2].map(() => exported({ file: small, format: 'bundle' })),
    );
    expect(Buffer.compare(one!, two!)).toBe(0);
  });
});
