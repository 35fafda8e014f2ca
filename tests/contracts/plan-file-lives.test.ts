import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { fromPlan, parsePlanFile, toPlan, writePlanFile } from '#contracts/plan-file.js';
import { NO_DECISIONS, type Placement } from '#domain/plan.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { fiscalYear } from '#units/fiscal-year.js';

const file = JSON.parse(readFileSync('seeds/mistakes/base.json', 'utf8')) as CampusFile;
file.laterChanges = [
  {
    id: 'to-lawn',
    name: 'Back to lawn',
    from: 'any',
    ages: [5, 8],
    dollarsPerSqFt: 0.8,
    hoursPer1000SqFt: 6,
    provenance: { basis: 'judgement', source: 'invented for a test' },
  },
];
file.published = {
  name: 'Plan of January',
  date: '2026-01-20',
  frozenThrough: 'FY2028',
  announcedWeight: 5,
  placements: [
    { year: 'FY2028', site: 'S-1', buildType: 'edible', announced: true },
    { year: 'FY2029', site: 'S-2', buildType: 'edible', secondHalf: 'FY2030' },
  ],
  hires: [{ year: 'FY2028', position: 'second-gardener', count: 1 }],
};
const load = loadCampusFile(file);
if (!load.ok) throw new Error(JSON.stringify(load.problems));
const { campus } = load;

const planOf = (placements: readonly Placement[]) => ({
  decisions: { ...NO_DECISIONS, placements },
  ...{ labor: [], unserved: [], spending: [], compost: [] },
});

function textOf(placements: readonly Placement[]): string {
  return writePlanFile(
    fromPlan(planOf(placements), campus.calendar, {
      campus: { id: campus.id, name: campus.name, digest: `sha-256:${'0'.repeat(64)}` },
      solver: { name: 'sample', version: '1', seed: 1, limit: { kind: 'work', units: 1 } },
      ending: 'work-limit',
      tiers: [],
    }),
  );
}

function readBack(text: string) {
  const parse = parsePlanFile(text);
  if (!parse.ok) throw new Error(JSON.stringify(parse.problems));
  return toPlan(parse.file, campus);
}

const halves: Placement = {
  site: 'S-1',
  buildType: 'edible',
  year: fiscalYear(2028),
  secondHalf: fiscalYear(2029),
  change: { id: 'to-lawn', age: 5 },
};

describe('A plan file with halves and later changes', () => {
  test('reads back as it was written, beside a site that has neither', () => {
    const plain = { site: 'S-2', buildType: 'edible', year: fiscalYear(2029) };
    const reading = readBack(textOf([halves, plain]));
    expect(reading.ok && reading.plan.decisions.placements).toEqual([halves, plain]);
  });

  test('writes nothing more for a site that is built at once and stays', () => {
    const text = textOf([{ site: 'S-2', buildType: 'edible', year: fiscalYear(2029) }]);
    expect(text).toContain('{"year":"FY2029","site":"S-2","buildType":"edible"}');
  });

  test.each([
    ['a change that the campus does not have', 'to-lawn', 'to-pond'],
    ['a second half after the plan', '"secondHalf":"FY2029"', '"secondHalf":"FY2099"'],
  ])('is refused for %s', (_, from, to) => {
    const reading = readBack(textOf([halves]).replace(from, to));
    expect(reading.ok).toBe(false);
  });
});

test('a published plan is read with the weights that it leaves out', () => {
  expect(campus.published).toMatchObject({
    frozenThrough: 2028,
    announcedWeight: 5,
    otherWeight: 1,
    placements: [
      { site: 'S-1', year: 2028, announced: true },
      { site: 'S-2', year: 2029, secondHalf: 2030, announced: false },
    ],
    hires: [{ position: 'second-gardener', year: 2028, count: 1 }],
  });
});

describe('A published plan that cannot be so', () => {
  const problemsWith = (placements: NonNullable<CampusFile['published']>['placements']) => {
    const told = loadCampusFile({ ...file, published: { ...file.published, placements } });
    return told.ok ? [] : told.problems.map(({ code, field }) => [code, field]);
  };
  const [first, second] = file.published?.placements ?? [];

  test('places a site twice', () => {
    expect(problemsWith([first!, { ...first!, year: 'FY2030' }])).toEqual([
      ['PUBLISHED-SITE-TWICE', 'placements[S-1]'],
    ]);
  });

  test('builds the second half first', () => {
    expect(problemsWith([first!, { ...second!, secondHalf: 'FY2028' }])).toEqual([
      ['PUBLISHED-HALVES-ORDER', 'placements[S-2]'],
    ]);
  });

  test('names a later change that is not there', () => {
    expect(problemsWith([{ ...first!, change: { id: 'to-pond', age: 5 } }])).toEqual([
      ['REFERENCE-MISSING', 'placements[S-1].change'],
    ]);
  });
});
