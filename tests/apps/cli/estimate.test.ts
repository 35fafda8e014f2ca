/** What `estimate` and `defaults` print. */
import { describe, expect, test } from 'vitest';
import { DEFAULTS } from '#estimating/defaults/defaults.data.js';
import type { SiteEstimates } from '#planning/site-estimate.js';
import { runCommand } from '../../support/cli/run-command.js';
import { smallCampus, SMALL_CAMPUS } from '../../support/cli/small-campus.js';
import { temporaryFolder } from '../../support/cli/temporary-folder.js';

const folder = temporaryFolder();
const [site] = smallCampus().candidateSites;
const { id, buildTypes } = site!;
const HEAD = /^As (\S+), /;

async function linesOf(...args: string[]): Promise<string[]> {
  const { code, out, notes } = await runCommand(...args);
  expect([code, notes]).toEqual([0, '']);
  return out.split('\n');
}

const depthOf = (line: string) => /^ */.exec(line)![0].length / 2;

describe('estimate', () => {
  test('prints every build type that the site may become, section by section', async () => {
    const lines = await linesOf('estimate', SMALL_CAMPUS, id);
    const heads = lines.flatMap((line) => HEAD.exec(line)?.slice(1) ?? []);
    expect(heads).toEqual(buildTypes);
    for (const section of ['takeoff', 'hours', 'money', 'water', 'benefits'])
      expect(lines.filter((line) => line === `  ${section}`)).toHaveLength(buildTypes.length);
    expect(lines[1]).toMatch(/^Prices are those of FY\d\d;/);
    expect(lines[2]).toMatch(/local codes and licensed practice decide/);
  });

  test('prints each number with its unit, formula and source, one step below what it makes', async () => {
    const lines = await linesOf('estimate', SMALL_CAMPUS, id, '--type', buildTypes[0]!);
    const from = lines.findIndex((line) => HEAD.test(line));
    const numbers = lines.slice(from).filter((line) => depthOf(line) >= 2);
    expect(numbers.length).toBeGreaterThan(50);
    for (const line of numbers)
      expect(line).toMatch(
        /^ +.+: (unknown \S.*|-?[\d,.]+ \S.*|-?\$[\d,.]+\S* ?.*) {2}\[.+; .+\]( \(opened above\))?$/,
      );
    lines.slice(1).forEach((line, i) => {
      expect(depthOf(line), line).toBeLessThanOrEqual(depthOf(lines[i]!) + 1);
    });
  });

  test('says of which year every price is', async () => {
    const lines = await linesOf('estimate', SMALL_CAMPUS, id, '--type', buildTypes[0]!);
    const starts = (text: RegExp) => lines.filter((line) => text.test(line));
    expect(starts(/^ {4}(low|likely|high) build cost: \$[\d,.]+ of FY27 /)).toHaveLength(3);
    expect(starts(/^ {4}10 years of care, prices held: \$[\d,.]+ of FY27 /)).toHaveLength(1);
    expect(starts(/^ {4}10 years of care, .+: \$[\d,.]+ of each year /)).toHaveLength(1);
  });

  test('opens each number once, and says where it was opened', async () => {
    const lines = await linesOf('estimate', SMALL_CAMPUS, id, '--type', buildTypes[0]!);
    const again = lines.filter((line) => line.endsWith(' (opened above)'));
    expect(again.length).toBeGreaterThan(0);
    for (const line of again) {
      const told = line.trim().replace(/ \(opened above\)$/, '');
      const first = lines.findIndex((other) => other.trim() === told);
      expect(first, told).toBeGreaterThan(-1);
      expect(first).toBeLessThan(lines.indexOf(line));
      expect(depthOf(lines[first + 1]!)).toBe(depthOf(lines[first]!) + 1);
    }
  });

  test('prints every gate with what would clear it and whom to ask', async () => {
    const lines = await linesOf('estimate', SMALL_CAMPUS, id);
    const from = lines.indexOf('Gates: never weighed against a score');
    const gates = lines.slice(from, lines.indexOf('Suitability'));
    expect(gates.filter((line) => /^ {2}\S+: (pass|fail|unknown) \(/.test(line))).toHaveLength(11);
    expect(gates.filter((line) => /^ {4}ask: /.test(line))).toHaveLength(11);
    expect(gates).toContain(
      '  utilities: pass (stated). Nothing was found by the locate of September 2026.',
    );
    expect(gates).toContain('  heritage: unknown (not recorded). Not reviewed.');
    expect(gates.join()).toContain('numbers as of 2025-10-16, confirm with the authority');
  });

  test('prints how the site is suited, and how sure its rank is', async () => {
    const lines = await linesOf('estimate', SMALL_CAMPUS, id);
    const told = lines.slice(lines.indexOf('Suitability'));
    expect(told[1]).toMatch(/^ {2}suitability: [\d.]+ points {2}\[sum of the parts/);
    expect(told.filter((line) => /^ {2}rank, /.test(line))).toHaveLength(3);
  });

  test('prints the same numbers as JSON', async () => {
    const lines = await linesOf('estimate', SMALL_CAMPUS, id, '--json');
    const told = JSON.parse(lines.join('\n')) as SiteEstimates;
    expect(told).toMatchObject({ site: id, name: site!.name, units: 'us' });
    const area = told.estimates[0]!.sections.hours[0]!.inputs[0]!;
    expect(area).toMatchObject({ name: 'area', unit: 'sf', inputs: [] });
  });

  test('tells values in metric, and says that the formulas are not', async () => {
    const us = JSON.parse((await runCommand('estimate', SMALL_CAMPUS, id, '--json')).out);
    const areaSqFt: number = us.estimates[0].sections.hours[0].inputs[0].value;
    const lines = await linesOf('estimate', SMALL_CAMPUS, id, '--units', 'metric');
    expect(lines[3]).toMatch(/^Told in metric\. The formulas are worked in feet/);
    const area = lines[lines.findIndex((line) => line.startsWith('    prepare: ')) + 1]!;
    const told = Number(/area: ([\d,.]+) m²/.exec(area)![1]!.replaceAll(',', ''));
    // A square foot is 0.09290304 square meters, exactly.
    expect(told / (areaSqFt * 0.09290304)).toBeCloseTo(1, 5);
  });

  test.each<[string, string[], RegExp]>([
    ['a site that is not there', ['nowhere'], /no site nowhere\. .*the nearest are .+\.$/],
    ['a type it may not become', [id, '--type', 'pond'], /may not become pond\. Give one that/],
    ['units that are not there', [id, '--units', 'cubits'], /Allowed choices are us, metric/],
    ['a site left out', [], /missing required argument 'site'/],
  ])('refuses %s', async (_, args, says) => {
    const { code, out, notes } = await runCommand('estimate', SMALL_CAMPUS, ...args);
    expect([code, out]).toEqual([2, '']);
    expect(notes.split('\n')[0]).toMatch(says);
  });
});

describe('suitability', () => {
  test('lists every candidate by rank, with what adds to its score', async () => {
    const lines = await linesOf('suitability', SMALL_CAMPUS);
    const sites = smallCampus().candidateSites;
    const heads = lines.flatMap((line) => /^(\d+) {2}(S-\d) /.exec(line)?.slice(1, 3) ?? []);
    expect(heads.filter((_, at) => at % 2 === 1).sort()).toEqual(sites.map((s) => s.id));
    const ranks = heads.filter((_, at) => at % 2 === 0).map(Number);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(lines.join('\n')).toMatch(
      /rank \d to \d in 9 of 10 draws; among the best three in \d+ %/,
    );
  });

  test('is the same as JSON, whose contributions add up to the points', async () => {
    const { sites } = JSON.parse((await runCommand('suitability', SMALL_CAMPUS, '--json')).out);
    for (const { least, most, contributions } of sites) {
      const points = contributions.map((c: { points: number | null }) => c.points ?? 0);
      expect(points.reduce((a: number, b: number) => a + b, 0)).toBeCloseTo(least, 9);
      const open = contributions.filter((c: { points: number | null }) => c.points === null);
      const room = open.reduce((sum: number, c: { weight: number }) => sum + c.weight, 0);
      expect(most - least).toBeCloseTo(room, 9);
    }
  });
});

describe('defaults', () => {
  test('prints every default with its range, unit and source', async () => {
    const lines = await linesOf('defaults');
    for (const [key, { unit, source, basis, year }] of Object.entries(DEFAULTS)) {
      const [line, ...more] = lines.filter((l) => l.startsWith(`  ${key}: `));
      expect(more).toEqual([]);
      expect(line).toContain(` ${unit}  [${basis}: ${source} (${year})]`);
    }
    expect(lines).toContain(
      '  density.compost: 800 | 1,000 | 1,400 lb/cu yd  [published: Deschutes Recycling: finished compost 1,000-1,200 lb/cu yd (2026)]',
    );
  });

  test('prints them in metric', async () => {
    const lines = await linesOf('defaults', '--units', 'metric');
    // 40 CFR 503 Appendix B prints 55 degrees Celsius beside the 131 °F of the table.
    expect(lines.find((line) => line.startsWith('  compost.heat: '))).toContain('55 | 55 | 55 °C');
  });

  test('prints what a campus measured below what it goes before', async () => {
    const own = { coefficient: 'truck.box', value: 14, unit: 'cu yd', date: '2026-10-02' };
    const overrides = [{ ...own, source: 'tape measure' }];
    const path = await folder.save('campus.json', { ...smallCampus(), overrides });
    const lines = await linesOf('defaults', path);
    const at = lines.findIndex((line) => line.startsWith('  truck.box: '));
    expect(lines[at + 1]).toBe(
      '    instead, on this campus: 14 cu yd  [measured: tape measure (2026-10-02)]',
    );
  });

  test('prints them as JSON, as many as there are', async () => {
    const { groups } = JSON.parse((await runCommand('defaults', '--json')).out);
    const rows = groups.flatMap((g: { defaults: object[] }) => g.defaults);
    expect(rows).toHaveLength(Object.keys(DEFAULTS).length);
  });
});
