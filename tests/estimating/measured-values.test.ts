/** What a campus measured goes before the planning defaults, wherever they are used. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { MeasuredValue } from '#domain/measured.js';
import type { ExplainedNode } from '#estimating/explained.js';
import { isDefaultKey } from '#estimating/defaults/overrides-at.js';
import { STATED_IN_FILE } from '#estimating/defaults/stated-in-file.data.js';
import { siteCharges } from '#estimating/site-charges/site-charges.js';
import { defaultsTable } from '#planning/defaults-table.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { siteEstimates } from '#planning/site-estimate.js';

const base = JSON.parse(readFileSync('seeds/mistakes/base.json', 'utf8'));
const [first] = base.candidateSites;

const own = (change: Partial<MeasuredValue> = {}): MeasuredValue => ({
  coefficient: 'density.compost',
  value: 1150,
  unit: 'lb/cu yd',
  source: 'scale tickets',
  date: '2026-10-02',
  ...change,
});

interface Given {
  readonly campus?: readonly MeasuredValue[];
  readonly site?: readonly MeasuredValue[];
  readonly facts?: object;
}

function loaded({ campus = [], site = [], facts = {} }: Given) {
  const changed = { ...first, overrides: site, facts: { ...first.facts, ...facts } };
  const candidateSites = [changed, ...base.candidateSites.slice(1)];
  const load = loadCampusFile({ ...base, candidateSites, overrides: campus });
  if (!load.ok) throw new Error(JSON.stringify(load.problems));
  return load.campus;
}

function nodesOf(campus: ReturnType<typeof loaded>, site: string): ExplainedNode[] {
  const answer = siteEstimates(campus, { site, units: 'us' });
  if (answer.kind !== 'estimated') throw new Error(answer.problem.problem);
  const every = (nodes: readonly ExplainedNode[]): ExplainedNode[] =>
    nodes.flatMap((node) => [node, ...every(node.inputs)]);
  return answer.estimates.estimates.flatMap((e) => every(Object.values(e.sections).flat()));
}

const densityAt = (campus: ReturnType<typeof loaded>, site: string) =>
  nodesOf(campus, site).find(({ name }) => name === 'density.compost');

describe('a measured value', () => {
  test('stands in the tree of an estimate with its source and date', () => {
    const campus = loaded({ campus: [own()] });
    expect(densityAt(campus, 'S-2')).toMatchObject({
      value: 1150,
      formula: 'campus value',
      source: 'measured: scale tickets (2026-10-02)',
    });
    const weight = (of: typeof campus) =>
      nodesOf(of, 'S-2').find(({ name }) => name === 'compost weight')!.value!;
    expect(weight(campus) / weight(loaded({}))).toBeCloseTo(1.15, 12);
  });

  test('of a site goes before that of the campus, and holds at no other site', () => {
    const campus = loaded({ campus: [own()], site: [own({ value: 900 })] });
    expect(densityAt(campus, 'S-1')?.value).toBe(900);
    expect(densityAt(campus, 'S-2')?.value).toBe(1150);
  });

  test('may be given in the metric unit of the default', () => {
    // 1 lb/cu yd is 0.5932764 kg/m³: NIST Special Publication 811 (2008), quoted from memory.
    const campus = loaded({ campus: [own({ value: 593.2764, unit: 'kg/m³' })] });
    expect(densityAt(campus, 'S-2')?.value).toBeCloseTo(1000, 3);
  });

  test('changes what a plan is charged, not only what is shown', () => {
    const key = 'takeoff.root-protection-compost-inches';
    const none = own({ coefficient: key, value: 0, unit: 'in', source: 'arborist' });
    const facts = { rootProtectedShare: 0.5 };
    const compost = (given: Given) => {
      const campus = loaded({ ...given, facts });
      const site = campus.candidates[0]!;
      const { buildCompost } = siteCharges(campus, site, site.buildTypes[0]!);
      return buildCompost;
    };
    expect(compost({ campus: [none] })).toBeLessThan(compost({}));
    expect(compost({ site: [none] })).toBe(compost({ campus: [none] }));
  });

  test('is judged for the whole campus as it is for a site', () => {
    const load = loadCampusFile({ ...base, overrides: [own({ coefficient: 'density.composts' })] });
    if (load.ok) throw new Error('an unknown name was let through');
    expect(load.problems).toMatchObject([
      {
        code: 'OVERRIDE-UNKNOWN',
        record: 'the file',
        field: 'overrides[density.composts].coefficient',
        remedy: expect.stringMatching(/the nearest are density\.compost, /),
      },
    ]);
  });

  test('cannot be of the class of an estimate', () => {
    const range = own({ coefficient: 'cost.class-5-high', value: 0.3, unit: 'share' });
    const load = loadCampusFile({ ...base, overrides: [range] });
    expect(load).toMatchObject({ ok: false, problems: [{ code: 'OVERRIDE-NOT-MEASURED' }] });
  });

  test('in the wrong unit is told the right ones', () => {
    const load = loadCampusFile({ ...base, overrides: [own({ unit: 'tons' })] });
    if (load.ok) throw new Error('a wrong unit was let through');
    expect(load.problems[0]?.remedy).toBe('Give the value in lb/cu yd or kg/m³.');
  });
});

test('the parts of the file that hold a coefficient are named for coefficients that are there', () => {
  expect(Object.keys(STATED_IN_FILE).filter((key) => !isDefaultKey(key))).toEqual([]);
});

test('the table of defaults shows what was measured, and where', () => {
  const campus = loaded({ campus: [own()], site: [own({ value: 900 })] });
  const rows = defaultsTable('us', campus).groups.flatMap(({ defaults }) => defaults);
  const source = 'scale tickets (2026-10-02)';
  expect(rows.find(({ key }) => key === 'density.compost')?.measured).toEqual([
    { site: null, value: 1150, source },
    { site: 'S-1', value: 900, source },
  ]);
  expect(rows.filter(({ measured }) => measured.length > 0)).toHaveLength(1);
  const metric = defaultsTable('metric', campus).groups.flatMap(({ defaults }) => defaults);
  const [all] = metric.find(({ key }) => key === 'density.compost')!.measured;
  expect(all?.value).toBeCloseTo(1150 * 0.5932764, 3);
});
