import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { DEFAULTS } from '#estimating/defaults/defaults.data.js';
import type { ExplainedNode } from '#estimating/explained.js';
import { defaultsTable } from '#planning/defaults-table.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { siteEstimates, type EstimateWish, type SiteEstimates } from '#planning/site-estimate.js';

const load = loadCampusFile(readFileSync('seeds/demo-strained.json', 'utf8'));
if (!load.ok) throw new Error(JSON.stringify(load.problems));
const { campus } = load;

function estimated(wish: Partial<EstimateWish> = {}): SiteEstimates {
  const answer = siteEstimates(campus, { site: 'TVU-03', units: 'us', ...wish });
  if (answer.kind !== 'estimated') throw new Error(answer.problem.problem);
  return answer.estimates;
}

function everyNode(nodes: readonly ExplainedNode[]): ExplainedNode[] {
  return nodes.flatMap((node) => [node, ...everyNode(node.inputs)]);
}

const nodesOf = ({ estimates }: SiteEstimates) =>
  estimates.flatMap(({ sections }) => everyNode(Object.values(sections).flat()));

describe('the estimates of a site', () => {
  test('are one for each build type that it may become, in the order of the file', () => {
    const site = campus.candidates.find(({ id }) => id === 'TVU-03')!;
    expect(estimated().estimates.map((e) => e.buildType)).toEqual(site.buildTypes);
    expect(estimated()).toMatchObject({ site: 'TVU-03', name: site.name, pricesOf: 'FY28' });
  });

  test('are one for the build type that is named', () => {
    const [, second] = campus.candidates.find(
      ({ buildTypes }) => buildTypes.length > 1,
    )!.buildTypes;
    const { id } = campus.candidates.find(({ buildTypes }) => buildTypes.length > 1)!;
    const named = estimated({ site: id, type: second });
    expect(named.estimates.map((e) => e.buildType)).toEqual([second]);
  });

  test('are of its own type for a site that was planted before', () => {
    const [planted] = campus.existing;
    const { estimates } = estimated({ site: planted!.id });
    expect(estimates.map((e) => e.buildType)).toEqual([planted!.buildType]);
  });

  test('have the same nodes in metric, each in a metric unit and the same unknowns', () => {
    const [us, metric] = [nodesOf(estimated()), nodesOf(estimated({ units: 'metric' }))];
    expect(metric.map((n) => n.name)).toEqual(us.map((n) => n.name));
    expect(metric.map((n) => n.value === null)).toEqual(us.map((n) => n.value === null));
    const customary = /(^|[/ ])(sf|ft|in|cu yd|cu ft|lb|gal)\b/;
    expect(us.filter((n) => customary.test(n.unit)).length).toBeGreaterThan(20);
    expect(metric.map((n) => n.unit).filter((unit) => customary.test(unit))).toEqual([]);
  });

  test('give the range of a default in the unit of its value', () => {
    const find = (units: 'us' | 'metric') =>
      nodesOf(estimated({ units })).find((n) => n.name === 'density.wood-chips');
    expect(find('us')).toMatchObject({ value: 500, formula: 'default, 240 to 700' });
    // 1 lb/cu yd is 0.5932764 kg/m³: NIST Special Publication 811 (2008), quoted from memory.
    expect(find('metric')).toMatchObject({ unit: 'kg/m³', formula: 'default, 142.4 to 415.3' });
  });
});

describe('water', () => {
  const base = JSON.parse(readFileSync('seeds/mistakes/base.json', 'utf8'));
  const months = Array.from({ length: 12 }, () => ({ evapotranspirationInches: 4, rainInches: 1 }));
  const weather = { source: 'station 12', months };
  const water = (change: object, tank?: object) => {
    const [first, ...others] = base.candidateSites;
    const candidateSites = [{ ...first, ...tank }, ...others];
    const read = loadCampusFile({ ...base, candidateSites, ...change });
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const answer = siteEstimates(read.campus, { site: first.id, units: 'us' });
    if (answer.kind !== 'estimated') throw new Error(answer.problem.problem);
    return { told: answer.estimates.estimates[0]!.sections.water, codes: read.warnings };
  };

  test('is unknown until the file records the weather, and then is reckoned from it', () => {
    expect(water({}).told.map(({ value }) => value)).toEqual([null]);
    const { told } = water({ weather });
    expect(told.map(({ name }) => name)).toEqual(['irrigation in a year']);
    expect(told[0]!.value).toBeGreaterThan(0);
  });

  test('of a tank follows the daily rain of the file', () => {
    const dailyRain = { firstDay: '2026-06-01', inches: Array.from({ length: 30 }, () => 0.2) };
    const tank = { gallons: 500, openingGallons: 0, roofSqFt: 1000, firstFlushInches: 0.02 };
    const { told } = water({ weather: { ...weather, dailyRain } }, { rainTank: tank });
    const caught = told.find(({ name }) => name === 'rain caught by the tank')!.value!;
    expect(caught).toBeCloseTo((30 * 1000 * 0.18 * 0.9 * 1728) / 231 / 12, 6);
  });

  test('typed in millimeters is warned about', () => {
    const wet = months.map((month) => ({ ...month, rainInches: 42 }));
    const [first] = water({ weather: { ...weather, months: wet } }).codes;
    expect(first).toMatchObject({ code: 'WEATHER-UNUSUAL', record: 'weather' });
  });
});

describe('what cannot be estimated', () => {
  test('a site that is not there, with the nearest that are', () => {
    const answer = siteEstimates(campus, { site: 'tvu-3', units: 'us' });
    expect(answer.kind).toBe('unknown-site');
    if (answer.kind === 'estimated') return;
    expect(answer.problem).toMatchObject({ code: 'SITE-UNKNOWN', value: 'tvu-3' });
    expect(answer.problem.remedy).toMatch(/the nearest are TVU-\d3, TVU-\d+, TVU-\d+\.$/);
  });

  test('a build type that the site may not become, with those it may', () => {
    const answer = siteEstimates(campus, { site: 'TVU-03', type: 'pond', units: 'us' });
    expect(answer.kind).toBe('unknown-type');
    const { buildTypes } = campus.candidates.find(({ id }) => id === 'TVU-03')!;
    const remedy = `Give one that it may become: ${buildTypes.join(', ')}.`;
    expect(answer).toMatchObject({ problem: { problem: 'TVU-03 may not become pond.', remedy } });
  });
});

describe('the table of defaults', () => {
  test('holds every default once, in the group that its key names', () => {
    const { groups } = defaultsTable('us');
    const keys = groups.flatMap(({ defaults }) => defaults.map(({ key }) => key));
    expect(keys.sort()).toEqual(Object.keys(DEFAULTS).sort());
    for (const { group, defaults } of groups)
      for (const { key } of defaults) expect(key.split('.', 1)).toEqual([group]);
  });

  test('tells values, unit and provenance as the row has them', () => {
    const rows = defaultsTable('us').groups.flatMap(({ defaults }) => defaults);
    for (const { key, provenance, measured, ...told } of rows) {
      expect(measured).toEqual([]);
      expect(DEFAULTS[key as keyof typeof DEFAULTS]).toMatchObject({ ...told, basis: provenance });
    }
  });

  test('keeps low, typical and high in order in metric', () => {
    const rows = defaultsTable('metric').groups.flatMap(({ defaults }) => defaults);
    expect(rows.filter((r) => !(r.low <= r.typical && r.typical <= r.high))).toEqual([]);
    expect(rows.find((r) => r.key === 'truck.box')?.unit).toBe('m³');
  });
});
