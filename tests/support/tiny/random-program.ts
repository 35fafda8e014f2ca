import fc from 'fast-check';
import type { Campus } from '#domain/campus.js';
import type { Commitment } from '#domain/commitment.js';
import type { PositionType } from '#domain/labor.js';
import type { Fund } from '#domain/money.js';
import type { CandidateSite, Gate } from '#domain/site.js';
import { centiHours } from '#units/centihours.js';
import { centiYards } from '#units/centiyards.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { promise } from './promises.js';
import {
  ANYTHING,
  TINY_CALENDAR,
  tinyCampus,
  tinyFund,
  tinyPool,
  tinySite,
} from './tiny-campus.js';

/** What a random tiny program is drawn as: plain numbers, so that a failure can be read and repeated. */
interface ProgramDraw {
  readonly years: number;
  readonly areas: readonly number[];
  readonly gates: readonly (keyof typeof GATES)[];
  readonly halves: boolean;
  readonly dollars: number;
  readonly carry: number;
  readonly giftForA: number;
  /** What a grant pays back of builds, by what lag and ratio; none: no such grant. */
  readonly grant: {
    readonly dollars: number;
    readonly lagYears: number;
    readonly matchRatio?: number;
  };
  readonly standing: number;
  readonly crew: number;
  readonly builders: number;
  readonly compost: number;
  /** Cubic yards of the other grade at the start; none: one grade alone. */
  readonly otherCompost: number;
  readonly existing: boolean;
  readonly position: boolean;
  readonly order: 'none' | 'precedence' | 'exclusive' | 'works';
  readonly yearly: Commitment['strength'] | 'none';
  readonly named: Commitment['strength'] | 'none';
  readonly by: number;
}

const GATES = { none: {}, closed: {}, later: { plannedClearFrom: fiscalYear(2029) } } as const;

/** Often none at all, else anything up to a most. */
const noneOr = (most: number, weight = 1) =>
  fc.oneof(
    { weight, arbitrary: fc.constant(0) },
    { weight: 4, arbitrary: fc.integer({ min: 0, max: most }) },
  );
const strength = fc.constantFrom('binding' as const, 'intended', 'aspiration', 'none', 'none');

const draws: fc.Arbitrary<ProgramDraw> = fc.record({
  years: fc.integer({ min: 1, max: 3 }),
  areas: fc.array(fc.integer({ min: 1000, max: 8000 }), { maxLength: 2 }),
  gates: fc.array(fc.constantFrom('none', 'none', 'none', 'closed', 'later'), {
    minLength: 2,
    maxLength: 2,
  }),
  halves: fc.boolean(),
  dollars: noneOr(90_000),
  carry: fc.integer({ min: 0, max: 3 }),
  giftForA: noneOr(30_000, 8),
  grant: fc.record(
    {
      dollars: noneOr(40_000, 4),
      lagYears: fc.integer({ min: 0, max: 3 }),
      matchRatio: fc.constantFrom(1, 0.5),
    },
    { requiredKeys: ['dollars', 'lagYears'] },
  ),
  standing: noneOr(3000, 12),
  crew: noneOr(200),
  builders: noneOr(300),
  compost: noneOr(150),
  otherCompost: noneOr(80, 4),
  existing: fc.boolean(),
  position: fc.boolean(),
  order: fc.constantFrom('none', 'none', 'precedence', 'exclusive', 'works'),
  yearly: strength,
  named: strength,
  by: fc.integer({ min: 2028, max: 2030 }),
});

/**
 * Random tiny programs: loose, tight and impossible ones, and degenerate ones among them: no site, one
 * year, no money, every gate unknown, nobody to work.
 */
export const randomPrograms: fc.Arbitrary<Campus> = draws.map(campusOf);

function campusOf(draw: ProgramDraw): Campus {
  return tinyCampus({
    calendar: { ...TINY_CALENDAR, horizonYears: draw.years },
    candidates: draw.areas.map((area, i) => siteOf(draw, { area, i })),
    existing: draw.existing
      ? [{ ...tinySite('E', { areaSqFt: 2000 }), ...PLANTED, stage: 'existing' }]
      : [],
    pools: [
      tinyPool('crew', draw.crew, ['plant', 'care-food', 'care-other', 'harvest']),
      tinyPool('builders', draw.builders, ['prepare']),
    ],
    positions: draw.position ? [GARDENER] : [],
    funds: [
      tinyFund('money', draw.dollars, { carry: draw.carry }),
      tinyFund('gift', draw.giftForA, { restriction: { ...ANYTHING, sites: ['A'] } }),
      ...grantsOf(draw),
    ],
    standingCosts:
      draw.standing > 0
        ? [{ id: 'rent', name: 'Shed', annual: cents(draw.standing * 100), escalation: 'wages' }]
        : [],
    compost: compostOf(draw),
    ...rulesOf(draw),
    commitments: promisesOf(draw),
  });
}

/** An award for the first years, fronted by the fund that pays everything. */
function grantsOf({ grant: { dollars, lagYears, matchRatio } }: ProgramDraw): Fund[] {
  if (dollars === 0) return [];
  const award = { year: fiscalYear(2028), lastYear: fiscalYear(2029), restriction: ANYTHING };
  return [
    tinyFund('grant', 0, {
      reimbursement: { frontedBy: 'money', lagYears },
      ...(matchRatio === undefined ? {} : { matchRatio }),
      inflows: [{ ...award, amount: cents(dollars * 100) }],
    }),
  ];
}

function compostOf({ compost, otherCompost }: ProgramDraw): Campus['compost'] {
  const supply = { ...tinyCampus().compost, made: {}, openingStock: centiYards(compost * 100) };
  if (otherCompost === 0) return supply;
  return {
    ...supply,
    other: {
      made: { fall: centiYards(5_00) },
      openingStock: centiYards(otherCompost * 100),
      pricePerYard: cents(15_00),
      mostBoughtPerSeason: 0,
    },
  };
}

const PLANTED = { buildType: 'beds', plantedYear: 2027 } as const;

function siteOf(
  { gates, halves }: ProgramDraw,
  { area, i }: { readonly area: number; readonly i: number },
): CandidateSite {
  const kind = gates[i] ?? 'none';
  const gate: Gate = {
    kind: 'utilities',
    status: 'unknown',
    note: '',
    bars: 'all',
    clearedBy: '',
    ...GATES[kind],
  };
  return tinySite(i === 0 ? 'A' : 'B', {
    areaSqFt: area,
    zone: i === 0 ? 'north' : 'south',
    gates: kind === 'none' ? [] : [gate],
    ...(halves && i === 0 ? { phasing: { mostYearsApart: 2 } } : {}),
  });
}

export const GARDENER: PositionType = {
  id: 'gardener',
  name: 'Gardener',
  term: 'recurring',
  tasks: ['prepare', 'plant', 'care-food', 'care-other', 'harvest'],
  startSeason: 'fall',
  leadMonths: 10,
  hours: hoursOf({ summer: 60, fall: 50, winter: 30, spring: 60 }),
  firstYearHours: hoursOf({ fall: 30, winter: 30, spring: 60 }),
  annualCost: cents(4000_00),
  firstYearCost: cents(3500_00),
  oneTimeCost: cents(500_00),
  most: 1,
  provenance: { basis: 'judgement', source: 'invented for a test' },
};

function hoursOf(hours: Record<string, number>) {
  return Object.fromEntries(Object.entries(hours).map(([s, h]) => [s, centiHours(h * 100)]));
}

function rulesOf({ areas, order }: ProgramDraw): Partial<Campus> {
  const [reason, sites] = ['a test', ['A', 'B']];
  if (areas.length < 2) return {};
  switch (order) {
    case 'precedence':
      return { precedence: [{ before: 'A', after: 'B', yearsApart: 1, reason }] };
    case 'exclusive':
      return { exclusiveGroups: [{ id: 'either', sites, reason }] };
    case 'works':
      return { construction: [{ ...WORKS, sites: ['B'] }] };
    case 'none':
      return {};
  }
}

const WORKS = {
  id: 'trench',
  name: 'Trench',
  kind: 'trench',
  from: fiscalYear(2029),
  to: fiscalYear(2029),
  certaintyPercent: 80,
  source: 'a test',
};

function promisesOf({ areas, years, yearly, named, by }: ProgramDraw): Commitment[] {
  const last = fiscalYear(2027 + years);
  const eachYear = {
    kind: 'sites-each-year',
    count: 1,
    from: fiscalYear(2028),
    to: fiscalYear(Math.min(last, 2029)),
    countsFromSqFt: 1500,
  } as const;
  const site = {
    kind: 'named-site',
    site: 'A',
    by: fiscalYear(Math.min(last, by)),
    buildTypes: ['fruit'],
  } as const;
  return [
    ...(yearly === 'none' ? [] : [promise('yearly', yearly, eachYear)]),
    ...(named === 'none' || areas.length === 0 ? [] : [promise('named', named, site)]),
  ];
}
