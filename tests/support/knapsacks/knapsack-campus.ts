import { readFileSync } from 'node:fs';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { Campus } from '#domain/campus.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import type { Knapsack } from './knapsacks.js';

const BASE = 'seeds/mistakes/base.json';
/** One unit of the first resource is this much capital. */
const DOLLARS_A_UNIT = 100;
/** Six inches on 54 sf are one cubic yard, which is one unit of the second resource. */
const SQ_FT_A_UNIT = 54;
const INCHES = 6;
/** Sites that take no compost are drawn as if they took ten units. */
const PLAIN_UNITS = 10;
/** Years after the one of planting in which benefit is counted, for a horizon of one year. */
const COUNTED_YEARS = 5;
const WEIGHT = 100;

type SitePart = CampusFile['candidateSites'][number];
type TypePart = CampusFile['buildTypes'][number];

/**
 * A knapsack of one or two resources as a campus file: an item is a site that can be built in the one
 * year of the plan, the first resource is capital, the second compost, and the profit is points.
 */
export function knapsackCampusFile(problem: Knapsack): CampusFile {
  const base = JSON.parse(readFileSync(BASE, 'utf8')) as CampusFile;
  const [, compost = 0] = problem.capacities;
  return {
    ...base,
    calendar: { ...base.calendar, horizonYears: 1, priceYear: base.calendar.firstYear },
    zones: [{ id: 'all', name: 'All' }],
    candidateSites: problem.profits.map((profit, item) => siteOf(base, problem, { item, profit })),
    existingSites: [],
    buildTypes: TYPE_COSTS.flatMap((cost) => [typeOf(base, cost, INCHES), typeOf(base, cost, 0)]),
    care: careless(base.care),
    pools: [],
    workDays: [],
    positions: [],
    funds: [capital(base, problem.capacities[0] ?? 0)],
    standingCosts: [],
    compost: {
      ...base.compost,
      madeCubicYards: {},
      openingStockCubicYards: compost,
      yardCubicYards: compost,
      mostBoughtCubicYardsPerSeason: 0,
    },
    materialWastePercent: 0,
    construction: [],
    precedence: [],
    exclusiveGroups: [],
    commitments: [],
    benefit: {
      criteria: [
        {
          id: 'profit',
          name: 'Profit',
          measure: 'walkers-per-day',
          weightPoints: WEIGHT,
          reference: WEIGHT * COUNTED_YEARS,
          whenUnknown: 0,
          provenance: { basis: 'judgement', source: 'A walker is worth a point.' },
        },
      ],
      discountPercent: 0,
    },
    handPlacements: [],
  };
}

/** The campus of a knapsack, read as a user's file is. */
export function knapsackCampus(problem: Knapsack): Campus {
  const load = loadCampusFile(JSON.stringify(knapsackCampusFile(problem)));
  if (load.ok) return load.campus;
  const first = load.problems.find((p) => p.severity === 'error');
  throw new Error(`${problem.name}: ${first?.record} ${first?.field} ${first?.problem}`);
}

/** Profit of the items whose sites are in a list of site ids. */
export function profitOf({ profits }: Knapsack, sites: readonly string[]): number {
  return sites.reduce((sum, id) => sum + (profits[Number(id.slice(1)) - 1] ?? NaN), 0);
}

/** Dollars a square foot of the types; a site's own factor, 0.1 to 20, does the rest. */
const TYPE_COSTS = [0, 0.1, 10] as const;

function typeId(cost: number, inches: number): string {
  return `cost-${cost}-inches-${inches}`;
}

function typeOf(base: CampusFile, cost: number, inches: number): TypePart {
  const [type] = base.buildTypes;
  if (!type) throw new Error(`${BASE} has no build type`);
  const none = { 'annual-bed': 0, 'perennial-bed': 0, woody: 0, 'rain-garden': 0, meadow: 0 };
  return {
    ...type,
    id: typeId(cost, inches),
    name: `$${cost} and ${inches} in`,
    edible: false,
    componentShares: { ...none, path: 1 },
    compostInches: { ...none, path: inches },
    prepareHoursPer1000SqFt: 0,
    plantHoursPer1000SqFt: 0,
    costDollarsPerSqFt: cost,
  };
}

function siteOf(
  base: CampusFile,
  { constraints: [money = [], compost = []] }: Knapsack,
  { item, profit }: { readonly item: number; readonly profit: number },
): SitePart {
  const [site] = base.candidateSites;
  if (!site) throw new Error(`${BASE} has no site`);
  const dollars = (money[item] ?? 0) * DOLLARS_A_UNIT;
  const yards = compost[item] ?? 0;
  const areaSqFt = SQ_FT_A_UNIT * (yards || PLAIN_UNITS);
  const cost = TYPE_COSTS.find((c) => dollars <= 20 * c * areaSqFt) ?? NaN;
  return {
    ...site,
    id: `I${item + 1}`,
    name: `Item ${item + 1}`,
    zone: 'all',
    boundary: square(item, areaSqFt),
    areaSqFt,
    areaConfirmed: true,
    facts: { ...site.facts, walkersPerDay: profit },
    gates: [],
    evidence: [],
    buildTypes: [typeId(cost, yards > 0 ? INCHES : 0)],
    costFactor: cost === 0 ? 1 : dollars / (cost * areaSqFt),
    notes: [],
  };
}

/** Squares 150 ft apart; degrees of latitude and of longitude at 47.7 north, near enough. */
function square(item: number, areaSqFt: number): SitePart['boundary'] {
  const side = Math.sqrt(areaSqFt);
  const at = (x: number, y: number): [number, number] => [-38 + x / 246_000, 47.7 + y / 364_800];
  const [west, south] = [(item % 12) * 150, Math.floor(item / 12) * 150];
  const [east, north] = [west + side, south + side];
  const ring = [at(west, south), at(east, south), at(east, north), at(west, north)];
  return { type: 'Polygon', coordinates: [[...ring, at(west, south)]] };
}

function careless(care: CampusFile['care']): CampusFile['care'] {
  return {
    ...care,
    path: {
      ...care.path,
      firstYearHoursPer1000SqFt: 0,
      matureHoursPer1000SqFt: 0,
      harvestHoursPer1000SqFt: 0,
      suppliesDollarsPer1000SqFt: 0,
      topDressInches: 0,
    },
  };
}

function capital(base: CampusFile, units: number): CampusFile['funds'][number] {
  const [fund] = base.funds;
  if (!fund) throw new Error(`${BASE} has no fund`);
  const { yearlyInflows: _, ...once } = fund;
  const inflows = [{ year: base.calendar.firstYear, amountDollars: units * DOLLARS_A_UNIT }];
  return { ...once, inflows, carryYears: 0 };
}
