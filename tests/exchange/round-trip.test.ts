import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { ExportFormat } from '#contracts/http/exports.js';
import { canonicalJson } from '#contracts/canonical.js';
import { readImport } from '#exchange/reading/read-import.js';
import { smallCampus } from '../support/cli/small-campus.js';
import { demoFile, dryRun, exported } from '../support/exchange/merged.js';

const nasty = fc.constantFrom(
  '=1+1',
  "'+x",
  'a\r\nb',
  ' x ',
  '"',
  ';',
  'none',
  'unknown',
  '_x0041_',
  '1,5',
  '\u007f\u000e',
  '\u{10fffe}\u0001',
  '\uffff',
  'toString',
  '__proto__',
);
/** No NUL: it marks a table that is not in UTF-8, which is refused as a whole. */
const anyText = fc
  .string({ unit: 'binary', minLength: 1, maxLength: 20 })
  .filter((text) => !text.includes('\u0000'));
const text = fc.oneof(anyText, nasty);
const number = fc.double({ min: 0, max: 30_000, noNaN: true });
const orUnknown = <T>(fact: fc.Arbitrary<T>) => fc.oneof(fact, fc.constant('unknown' as const));
const gateKind = fc.constantFrom('contamination', 'utilities', 'slope', 'heritage');
const gate = fc.record({
  kind: gateKind,
  status: fc.constantFrom('pass', 'fail', 'unknown'),
  note: text,
  bars: fc.constantFrom('all', 'edible'),
  clearedBy: text,
});

/** Anything that the schema lets a site say, whether or not it makes sense. */
const saying = fc.record({
  name: text,
  areaSqFt: number,
  areaConfirmed: fc.option(fc.boolean(), { nil: undefined }),
  costFactor: number,
  earliest: fc.option(fc.constantFrom('FY2029', 'FY2031'), { nil: undefined }),
  gates: fc.array(gate, { maxLength: 4 }),
  notes: fc.array(fc.oneof(text, fc.constant('')), { maxLength: 3 }),
  facts: fc.record({
    cover: orUnknown(text),
    ph: orUnknown(number),
    walkersPerDay: orUnknown(number),
    truckAccess: orUnknown(fc.boolean()),
    rootProtectedShare: orUnknown(fc.double({ min: 0, max: 1, noNaN: true })),
  }),
  backwards: fc.boolean(),
});

function campusSaying(said: readonly Record<string, unknown>[]): CampusFile {
  return smallCampus((file) => {
    for (const [place, { backwards, facts, ...fields }] of said.entries()) {
      const site = file.candidateSites[place]!;
      Object.assign(site, JSON.parse(JSON.stringify(fields)));
      Object.assign(site.facts, facts);
      if (backwards) site.boundary.coordinates.forEach((ring) => ring.reverse());
    }
  });
}

const campus = fc.array(saying, { minLength: 2, maxLength: 4 }).map(campusSaying);

describe.each(['csv', 'xlsx', 'geojson'] as const)('a campus that goes out as %s', (format) => {
  test('and comes back says what it said', async () => {
    await fc.assert(
      fc.asyncProperty(campus, async (file) => {
        const back = await readImport(await exported({ file, format }), file);
        expect(back.problems).toEqual([]);
        expect(back.rows.map(({ outcome }) => outcome)).toEqual(
          Array(file.candidateSites.length + file.existingSites.length).fill('unchanged'),
        );
        expect(canonicalJson(back.document)).toBe(canonicalJson(file));
      }),
      { numRuns: format === 'xlsx' ? 12 : 40 },
    );
  });
});

test.each<ExportFormat>(['csv', 'xlsx', 'geojson', 'bundle'])(
  'the demo campus comes back from %s unchanged, judged as a whole',
  async (format) => {
    const file = demoFile();
    const report = await dryRun(await exported({ file, format }), file);
    expect(report).toMatchObject({ canApply: true, counts: { changed: 0, new: 0, rejected: 0 } });
    expect(report.counts.unchanged).toBeGreaterThan(30);
  },
);

test.each(['csv', 'xlsx', 'geojson'] as const)(
  'sites that a campus lost come back from %s with all that the table tells of them',
  async (format) => {
    const whole = smallCampus();
    const bytes = await exported({ file: whole, format });
    const lost = smallCampus((file) => {
      file.candidateSites = file.candidateSites.filter(({ id }) => id !== 'S-1');
    });
    const { document, rows } = await readImport(bytes, lost);
    expect(rows.filter(({ outcome }) => outcome === 'new').map((r) => r.record)).toEqual([
      'site S-1',
    ]);
    const back = (document as CampusFile).candidateSites.find(({ id }) => id === 'S-1');
    const { evidence: _evidence, gates, ...told } = whole.candidateSites[0]!;
    expect(back).toMatchObject(told);
    const named = (list: typeof gates) => list.map(({ kind, status }) => ({ kind, status }));
    expect(named(back!.gates)).toEqual(named(gates));
  },
);

test('no copy for people outside tells lab values, gates, notes or the names of gifts', async () => {
  const file = demoFile();
  for (const format of ['csv', 'geojson'] as const) {
    const shown = new TextDecoder().decode(await exported({ file, format, audience: 'public' }));
    expect(shown).not.toMatch(/lead_mg|ph,|"ph"|gates|notes|water_ft/);
    const back = await readImport(new TextEncoder().encode(shown), file);
    expect(new Set(back.rows.map(({ outcome }) => outcome))).toEqual(new Set(['unchanged']));
  }
});
