import type { BuildType } from '#domain/build-type.js';
import type { Calendar } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { COMPONENTS, type CareCoefficients, type Component } from '#domain/component.js';
import type { LaborPool, TaskClass } from '#domain/labor.js';
import type { Fund, Restriction } from '#domain/money.js';
import type { CandidateSite, SiteFacts } from '#domain/site.js';
import { centiHours } from '#units/centihours.js';
import { centiYards } from '#units/centiyards.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { known, UNKNOWN } from '#units/known.js';

/** Invented numbers for tests only; round, so that sums can be done in the head. */
const INVENTED = { basis: 'judgement', source: 'invented for a test' } as const;

export const TINY_CALENDAR: Calendar = {
  fiscalYearStartMonth: 7,
  firstYear: fiscalYear(2028),
  horizonYears: 3,
  planningDate: '2026-11-25',
  priceYear: fiscalYear(2028),
  seasons: [
    { id: 'summer', months: [6, 7, 8] },
    { id: 'fall', months: [9, 10, 11] },
    { id: 'winter', months: [12, 1, 2] },
    { id: 'spring', months: [3, 4, 5] },
  ],
  prepareSeason: 'fall',
  plantSeason: 'spring',
  terms: [],
};

const SHARES = { summer: 0.4, fall: 0.2, winter: 0.1, spring: 0.3 };

function careOf(component: Component): CareCoefficients {
  const none = component === 'path';
  return {
    component,
    firstYearHours: none ? 0 : 60,
    matureHours: none ? 0 : 30,
    decayPerYear: 0.7,
    seasonShares: SHARES,
    harvestHours: component === 'woody' ? 10 : 0,
    bearing: [0, 0.5, 1],
    harvestSeasonShares: { summer: 0.5, fall: 0.5, winter: 0, spring: 0 },
    suppliesDollars: none ? 0 : 100,
    topDressInches: none ? 0 : 0.5,
    provenance: INVENTED,
  };
}

export function byComponent<T>(value: (component: Component) => T): Record<Component, T> {
  return Object.fromEntries(COMPONENTS.map((c) => [c, value(c)])) as Record<Component, T>;
}

/** A type made of one component and path in halves. */
export function tinyType(
  id: string,
  component: Component,
  change: Partial<BuildType> = {},
): BuildType {
  return {
    id,
    name: id,
    edible: component === 'annual-bed' || component === 'woody',
    shares: byComponent((c) => (c === component || c === 'path' ? 0.5 : 0)),
    compostInches: byComponent(() => 3),
    chipInches: byComponent(() => 3),
    prepareHoursPer1000SqFt: 30,
    plantHoursPer1000SqFt: 10,
    costPerSqFt: cents(8_00),
    provenance: INVENTED,
    ...change,
  };
}

export const NO_FACTS: SiteFacts = {
  cover: known('mown turf'),
  soil: known('loam'),
  ph: UNKNOWN,
  organicMatterPercent: UNKNOWN,
  leadMgPerKg: UNKNOWN,
  slopePercent: known(2),
  sunHours: UNKNOWN,
  walkersPerDay: known(1000),
  waterFeet: UNKNOWN,
  kitchenFeet: UNKNOWN,
  truckAccess: UNKNOWN,
  rootProtectedShare: UNKNOWN,
};

export function tinySite(id: string, change: Partial<CandidateSite> = {}): CandidateSite {
  return {
    stage: 'candidate',
    id,
    name: `Site ${id}`,
    zone: 'north',
    boundary: [],
    areaSqFt: 5000,
    facts: NO_FACTS,
    gates: [],
    evidence: [],
    buildTypes: ['beds', 'fruit'],
    costFactor: 1,
    notes: [],
    ...change,
  };
}

const ALL_TASKS: readonly TaskClass[] = [
  'prepare',
  'plant',
  'care-food',
  'care-other',
  'harvest',
  'supervise',
];

export function tinyPool(
  id: string,
  hoursEachSeason: number,
  tasks: readonly TaskClass[] = ALL_TASKS,
): LaborPool {
  const hours = centiHours(Math.round(hoursEachSeason * 100));
  return {
    id,
    name: id,
    kind: 'staff',
    tasks,
    hours: { summer: hours, fall: hours, winter: hours, spring: hours },
    provenance: INVENTED,
  };
}

export const ANYTHING: Restriction = {
  lines: ['build', 'care', 'positions', 'compost', 'standing'],
  sites: 'any',
  buildTypes: 'any',
};

/** A fund with the same dollars each year of the plan and its tail, carried for some years. */
export function tinyFund(
  id: string,
  dollarsAYear: number,
  change: Partial<Fund> & { carry?: number; restriction?: Restriction } = {},
): Fund {
  const { carry = 1, restriction = ANYTHING, ...fund } = change;
  return {
    id,
    name: id,
    kind: 'capital',
    status: 'received',
    counted: true,
    floor: cents(0),
    inflows: Array.from({ length: 8 }, (_, i) => ({
      year: fiscalYear(2028 + i),
      amount: cents(dollarsAYear * 100),
      lastYear: fiscalYear(2028 + i + carry),
      restriction,
    })),
    ...fund,
  };
}

/** Two sites, two types, three years, with more than enough of everything. */
export function tinyCampus(change: Partial<Campus> = {}): Campus {
  return {
    id: 'tiny',
    name: 'Tiny campus',
    program: 'Tiny program',
    dataDate: '2026-11-25',
    calendar: TINY_CALENDAR,
    zones: [
      { id: 'north', name: 'North' },
      { id: 'south', name: 'South' },
    ],
    candidates: [tinySite('A'), tinySite('B', { zone: 'south', areaSqFt: 3000 })],
    existing: [],
    buildTypes: [tinyType('beds', 'perennial-bed'), tinyType('fruit', 'woody')],
    care: byComponent(careOf),
    pools: [tinyPool('staff', 1000)],
    workDays: [],
    positions: [],
    funds: [tinyFund('capital', 100_000)],
    standingCosts: [],
    escalation: { construction: 0.04, wages: 0.02, supplies: 0.03 },
    compost: {
      made: { spring: centiYards(200_00) },
      openingStock: centiYards(200_00),
      yard: centiYards(300_00),
      pricePerYard: cents(40_00),
      mostBoughtPerSeason: 0,
      topDressSeason: 'spring',
      topDressFromAge: 2,
    },
    materialWaste: 0.05,
    construction: [],
    hardAtCertaintyPercent: 60,
    paybackYears: 7,
    precedence: [],
    exclusiveGroups: [],
    commitments: [],
    benefit: {
      criteria: [
        {
          id: 'area',
          name: 'Lawn converted',
          measure: 'converted-area',
          weight: 60,
          reference: 5000,
          whenUnknown: 0,
          provenance: INVENTED,
        },
        {
          id: 'food',
          name: 'Food',
          measure: 'food-area',
          weight: 40,
          reference: 2500,
          whenUnknown: 0,
          provenance: INVENTED,
        },
      ],
      discount: 0.03,
    },
    handPlacements: [],
    ...change,
  };
}
