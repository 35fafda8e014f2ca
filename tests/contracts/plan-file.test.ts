import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { digestOf } from '#contracts/canonical.js';
import {
  fromPlan,
  parsePlanFile,
  planOriginProblems,
  toPlan,
  writePlanFile,
  type PlanFile,
  type PlanOrigin,
} from '#contracts/plan-file.js';
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { plansOf } from './sample-plans.js';

const document = JSON.parse(readFileSync('seeds/mistakes/base.json', 'utf8')) as object;
let campus: Campus;

beforeAll(() => {
  const load = loadCampusFile(document);
  if (!load.ok) throw new Error('the base campus has problems');
  campus = load.campus;
});

const origin: PlanOrigin = {
  campus: { id: 'small-campus', name: 'Larch Ferry College', digest: digestOf(document) },
  solver: { name: 'sample', version: '1.0.0', seed: 7, limit: { kind: 'work', units: 5000 } },
  ending: 'work-limit',
  tiers: [
    {
      name: 'benefit',
      unit: 'points',
      sense: 'max',
      value: 41.25,
      bound: null,
      gap: null,
      tolerance: 0.001,
      proven: false,
    },
  ],
};

const fileOf = (plan: Plan): PlanFile => fromPlan(plan, campus.calendar, origin);

function planOf(file: PlanFile): Plan {
  const reading = toPlan(file, campus);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function reread(text: string): PlanFile {
  const parse = parsePlanFile(text);
  if (!parse.ok) throw new Error(JSON.stringify(parse.problems));
  return parse.file;
}

/** Rows as a set of texts, since a file puts them in an order of its own. */
function rowsOf(plan: Plan): string[] {
  const { decisions, ...lists } = plan;
  return Object.entries({ ...decisions, ...lists })
    .flatMap(([name, rows]) => (rows as object[]).map((row) => name + rowText(row)))
    .sort();
}

const rowText = (row: object): string =>
  JSON.stringify(Object.entries(row).sort(([a], [b]) => (a < b ? -1 : 1)));

describe('A plan file', () => {
  test('gives back every row of the plan to the cent and the hundredth', () => {
    fc.assert(
      fc.property(plansOf(campus), (plan) => {
        expect(rowsOf(planOf(reread(writePlanFile(fileOf(plan)))))).toEqual(rowsOf(plan));
      }),
    );
  });

  test('is the same text whatever the order of the rows in the plan', () => {
    fc.assert(
      fc.property(plansOf(campus), (plan) => {
        const backward = Object.fromEntries(
          Object.entries(plan).map(([k, v]) => [
            k,
            Array.isArray(v) ? (v as unknown[]).toReversed() : v,
          ]),
        ) as unknown as Plan;
        expect(writePlanFile(fileOf(backward))).toBe(writePlanFile(fileOf(plan)));
      }),
    );
  });

  test('is the same text after it was read and written again', () => {
    fc.assert(
      fc.property(plansOf(campus), (plan) => {
        const text = writePlanFile(fileOf(plan));
        expect(writePlanFile(reread(text))).toBe(text);
      }),
    );
  });

  test('names years and seasons as a reader would', () => {
    const plan: Plan = {
      decisions: {
        placements: [],
        hires: [],
        workDays: [],
        purchases: [{ season: 4, cubicYards: 3 }],
      },
      labor: [],
      unserved: [],
      spending: [],
      compost: [],
    };
    expect(fileOf(plan).plan.compostPurchases).toEqual([
      { year: 'FY2029', season: 'summer', cubicYards: 3 },
    ]);
  });

  test('is tied to the campus file it was made from', () => {
    const [plan] = fc.sample(plansOf(campus), 1);
    const file = fileOf(plan as Plan);
    expect(planOriginProblems(file, document)).toEqual([]);
    const changed = { ...document, name: 'Another College' };
    expect(planOriginProblems(file, changed).map(({ code }) => code)).toEqual([
      'PLAN-OTHER-CAMPUS',
    ]);
  });
});

describe('A plan file edited by hand', () => {
  const row = {
    year: 'FY2028',
    season: 'fall',
    source: 'gardener',
    taskClass: 'prepare',
    hours: 1,
  };
  const withLabor = (edit: object): unknown => {
    const file = fileOf({
      decisions: { placements: [], hires: [], workDays: [], purchases: [] },
      labor: [],
      unserved: [],
      spending: [],
      compost: [],
    });
    return { ...file, plan: { ...file.plan, labor: [{ ...row, ...edit }] } };
  };

  test('is read where nothing is wrong', () => {
    expect(codesOf(withLabor({}))).toEqual([]);
  });

  test.each([
    ['hours finer than a hundredth', { hours: 1.005 }, 'PLAN-TOO-FINE'],
    ['an unknown source', { source: 'gardner' }, 'PLAN-REFERENCE-MISSING'],
    ['an unknown season', { season: 'autumn' }, 'PLAN-REFERENCE-MISSING'],
    ['a year after the tail', { year: 'FY2041' }, 'PLAN-YEAR-OUTSIDE'],
    ['a bare year', { year: 2028 }, 'FISCAL-YEAR-UNCLEAR'],
    ['negative hours', { hours: -1 }, 'VALUE-NEGATIVE'],
    ['text for hours', { hours: '1' }, 'FIELD-TYPE'],
    ['an unknown class of work', { taskClass: 'weeding' }, 'VALUE-NOT-ALLOWED'],
    ['a field of another name', { hour: 1 }, 'FIELD-UNKNOWN'],
  ])('with %s is refused', (_, edit, code) => {
    expect(codesOf(withLabor(edit))).toEqual([code]);
  });

  test.each([
    ['a broken text', '{"format": ', 'FILE-NOT-JSON'],
    ['a campus file', JSON.stringify(document), 'FILE-FORMAT'],
    ['a list', '[]', 'FILE-FORMAT'],
  ])('that is %s is refused', (_, text, code) => {
    expect(codesOf(text)).toEqual([code]);
  });

  test('says which row is meant', () => {
    const parse = parsePlanFile(withLabor({ hours: '1' }));
    expect(parse.ok ? [] : parse.problems.map(({ record, field }) => [record, field])).toEqual([
      ['labor row 1', 'hours'],
    ]);
  });

  function codesOf(input: unknown): string[] {
    const parse = parsePlanFile(input);
    if (!parse.ok) return parse.problems.map(({ code }) => code);
    const reading = toPlan(parse.file, campus);
    return reading.ok ? [] : reading.problems.map(({ code }) => code);
  }
});
