/**
 * The administration brief of the small campus and of both demos that have plans: what it must say,
 * what it must never say, and its length as counted by a reader of PDF that did not write it.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Plan } from '#domain/plan.js';
import type { Campus } from '#domain/campus.js';
import type { SolveReport } from '#domain/tier.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { planOverview } from '#explain/overview/compute-overview.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { possibleLifecycles } from '#optimizer/columns/lifecycles.js';
import { construct, RECIPES } from '#optimizer/construct/construct.js';
import { decisionsOf } from '#optimizer/search/state.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { administrationBrief } from '#report/administration-brief/administration-brief.js';
import { documentProblems } from '#report/document/document-problems.js';
import { plainText, type Inline } from '#report/document/inline.js';
import type { Block, PlanDocument } from '#report/document/plan-document.js';
import type { Table } from '#report/document/table.js';
import { renderPdf } from '#report-pdf/render-pdf.js';
import { readPdf } from '../support/pdf-reading.js';
import { planOf, smallCampus } from '../support/small-campus.js';

const REPORT: SolveReport = { ending: 'time-limit', tiers: [], conflict: [] };
const CONTEXT = { planVersion: 'a1b2c3d4', createdAt: '2026-11-25T12:00:00Z' };

interface Case {
  readonly overview: PlanOverview;
  readonly document: PlanDocument;
}

function briefOf(campus: Campus, plan: Plan): Case {
  const overview = planOverview(campus, plan, REPORT);
  return { overview, document: administrationBrief(overview, CONTEXT) };
}

const small = (): Case => {
  const campus = smallCampus();
  return briefOf(
    campus,
    planOf(campus, [
      ['S-1', 'edible', 2028],
      ['S-2', 'pollinator', 2029],
    ]),
  );
};

const demos = new Map<string, Case>();

function demo(name: string): Case {
  const found = demos.get(name);
  if (found) return found;
  const load = loadCampusFile(readFileSync(`seeds/demo-${name}.json`, 'utf8'));
  if (!load.ok) throw new Error(JSON.stringify(load.problems, null, 1));
  const { campus } = load;
  const charges = campusCharges(campus);
  const lifecycles = possibleLifecycles(campus, charges);
  const state = construct(tablesOf({ campus, charges, lifecycles }), RECIPES[0]!);
  if (!state) throw new Error(`no plan of ${name} was constructed`);
  const made = briefOf(campus, completePlan(campus, decisionsOf(state), charges).plan);
  demos.set(name, made);
  return made;
}

describe('the brief of a small campus', () => {
  const { overview, document } = small();
  const text = textOf(document);

  test('has nothing that keeps it from being printed', () => {
    expect(documentProblems(document)).toEqual([]);
  });

  test('says of every kind of number how it is worked out and where it comes from', () => {
    const told = textOf(document);
    expect(told).toContain('Where the numbers come from');
    for (const { number, how, source } of overview.sources) {
      for (const part of [number, how, source]) expect(told).toContain(part);
    }
    const named = overview.sources.map(({ number }) => number);
    expect(named).toContain('Care');
    expect(overview.sources.find(({ number }) => number === 'Costs')?.source).toMatch(
      /^[a-z ]+ \(\d\)/,
    );
  });

  test('carries program, version, data date, status and how near it is to proven', () => {
    expect(document).toMatchObject({
      program: 'Planted ground program',
      planVersion: 'a1b2c3d4',
      dataDate: 'November 20, 2026',
      status: 'draft',
      solveNote: overview.solve.sentence,
      paper: 'letter',
    });
  });

  test('opens with the decision in one sentence, with the class 5 range', () => {
    const [first] = document.blocks;
    expect(first).toMatchObject({
      kind: 'callout',
      tone: 'decision',
      paragraphs: [
        'Approve preparing S-1 Library Steps (likely $67,000; class 5 range $47,000 to $100,000 in FY28 dollars) in FY28, for planting in spring 2028.',
      ],
    });
  });

  test('repeats every headline, reason, caution and limit of the overview', () => {
    const { headline, next, cautions, limits } = overview;
    const said = [
      headline.firstLimit,
      headline.promise,
      ...next.sites[0]!.reasons.slice(0, 5).map(({ sentence }) => sentence),
      ...next.sites[0]!.against.slice(0, 4).map(({ sentence }) => sentence),
      ...limits
        .filter(({ resource }) => ['summer hours', 'money', 'compost', 'sites'].includes(resource))
        .map(({ sentence }) => sentence),
      ...cautions,
    ];
    expect(said.length).toBeGreaterThan(12);
    for (const sentence of said) expect(text).toContain(sentence);
  });

  test('says what class of estimate it is, what it is not, and that nothing else was solved', () => {
    expect(text).toContain(
      'AACE class 5, about -30% to +50%, for planning, not for contract award',
    );
    expect(text).toContain('no approval, design, permit, clearance of soil or utilities');
    expect(text).toContain('Local codes');
    expect(text).toContain('no other choice was solved');
  });

  test('follows the figure with a row for every year, hours and dollars as in the overview', () => {
    const figure = document.blocks.find((block) => block.kind === 'figure')!;
    expect(figure.table.rows.map(({ cells }) => cells[0])).toEqual(
      overview.years.map(({ year }) => year),
    );
    const column = (header: string) =>
      figure.table.columns.findIndex((one) => one.header === header);
    const summers = overview.seasons.filter((s) => s.season === 'summer' && !s.afterHorizon);
    figure.table.rows.forEach(({ cells }, index) => {
      const care = summers[index]!.careByAge;
      const cell = (header: string) => plainText(cells[column(header)]!);
      expect(cell('Mature')).toBe(Math.round(care.mature).toLocaleString('en-US'));
      expect(cell('Build, $k')).toBe(String(Math.round(overview.money[index]!.build / 1000)));
    });
  });

  test('sets doing less beside the plan in columns of one width', () => {
    const options = tables(document).find(({ caption }) => caption.startsWith('Options'))!;
    const [, ...columns] = options.columns;
    expect(columns.map(({ header }) => header)).toEqual(
      overview.alternatives.map(({ title }, index) => `${'ABC'.charAt(index)}. ${title}`),
    );
    expect(new Set(columns.map(({ weight }) => weight)).size).toBe(1);
  });

  test('names the missing soil test and who reads it', () => {
    expect(text).toContain('No soil test yet.');
    expect(text).toContain('A soil test, read by environmental health and safety');
  });
});

describe('a year with no site', () => {
  test('asks to agree to that, and says what the year is good for', () => {
    const campus = smallCampus();
    const { document } = briefOf(campus, planOf(campus, []));
    expect(documentProblems(document)).toEqual([]);
    const text = textOf(document);
    expect(text).toContain('Agree to prepare no site in FY28.');
    expect(text).toContain('Use the year to settle what is not known');
  });
});

describe.each(['strained', 'healthy'])('the brief of the %s demo', (name) => {
  test('is two to four pages with a bookmark for each part', async () => {
    const { document } = demo(name);
    const { pages, outline } = await readPdf(await renderPdf(document));
    expect(pages.length).toBeGreaterThanOrEqual(2);
    expect(pages.length).toBeLessThanOrEqual(4);
    expect(JSON.stringify(outline)).toContain('All years');
  });

  test('says no number of one in the plural, and nothing that is no word', () => {
    const text = textOf(demo(name).document);
    expect(text).not.toMatch(
      /(?<![\d,.])1 (sites|hours|years|candidates|questions|funds|lines|promises|aspirations)\b/,
    );
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|null/);
    expect(text).not.toMatch(/\d\.\d{3,}/);
  });

  test('holds every month to ask, every site of the year and the year of each limit', () => {
    const { overview, document } = demo(name);
    const text = textOf(document);
    const first = overview.hires[0];
    if (first) expect(text).toContain(first.askBy);
    for (const { site } of overview.next.sites) expect(text).toContain(site);
    for (const { label } of overview.limits) if (label !== null) expect(text).toContain(label);
  });
});

function tables(document: PlanDocument): Table[] {
  return document.blocks.flatMap((block) => {
    if (block.kind === 'figure') return [block.table];
    return block.kind === 'table' ? [block] : [];
  });
}

function textOf(document: PlanDocument): string {
  return document.blocks.flatMap(textsOf).map(plainText).join('\n');
}

function textsOf(block: Block): Inline[] {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
      return [block.text];
    case 'list':
      return [...block.items];
    case 'callout':
      return [block.title, ...block.paragraphs];
    case 'table':
      return tableTexts(block);
    case 'figure':
      return [block.title, block.alt, ...tableTexts(block.table)];
    default:
      return [];
  }
}

function tableTexts(table: Table): Inline[] {
  return [
    table.caption,
    ...table.columns.map(({ header }) => header),
    ...table.rows.flatMap(({ cells }) => cells),
    ...(table.note === undefined ? [] : [table.note]),
  ];
}
