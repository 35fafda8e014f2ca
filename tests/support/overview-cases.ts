/**
 * What the tests of overviews share. Expected numbers are worked out from the file by the formulas of the
 * trade, by hand or in other ways than the code: costs from $/sq ft and growth, care from first
 * year, mature level and decay, short hours from Hall's condition, ledgers from conservation.
 */
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { SolveReport } from '#domain/tier.js';
import { planOverview } from '#explain/overview/compute-overview.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { planOf, smallCampus, smallFile, type Placed, type SmallFile } from './small-campus.js';

const REPORT: SolveReport = { ending: 'proven', tiers: [], conflict: [] };
export const USUAL: readonly Placed[] = [
  ['S-1', 'edible', 2028],
  ['S-3', 'pollinator', 2029],
  ['S-2', 'pollinator', 2030],
];
export const SECOND_GARDENER = [{ position: 'second-gardener', year: fiscalYear(2032), count: 1 }];

export interface Case {
  readonly campus: Campus;
  readonly plan: Plan;
  readonly overview: PlanOverview;
}

export function overviewOf(
  placed: readonly Placed[] = USUAL,
  of: { campus?: Campus; hires?: typeof SECOND_GARDENER } = {},
): Case {
  const campus = of.campus ?? smallCampus();
  const plan = planOf(campus, placed, of.hires);
  return { campus, plan, overview: planOverview(campus, plan, REPORT) };
}

/** With an operating allotment that can pay a second gardener. */
export function wellPaid(file: SmallFile): void {
  file.funds[1]!['yearlyInflows'] = [{ from: 'FY2028', amountDollars: 180_000, growthPercent: 2 }];
}

/** A summer in which the gardener has few hours, so that care outgrows them. */
export const thinSummer = (hours: number) =>
  smallCampus((file) => {
    wellPaid(file);
    file.pools[0]!.hours['summer'] = hours;
  });

interface CareOfFile {
  readonly firstYearHoursPer1000SqFt: number;
  readonly matureHoursPer1000SqFt: number;
  readonly decayPerYear: number;
  readonly seasonShares: Record<string, number>;
  readonly harvestHoursPer1000SqFt: number;
  readonly bearing: readonly number[];
  readonly harvestSeasonShares: Record<string, number>;
}

/** Hours of summer care in year `age`: m(a) = mature + (first - mature) e^(-k (a - 1)), by season share; harvest by bearing. */
export function careByFormula(of: {
  readonly type: string;
  readonly thousands: number;
  readonly age: number;
}): number {
  const { type, thousands, age } = of;
  const season = 'summer';
  const file = smallFile();
  const shares = file.buildTypes.find(({ id }) => id === type)!.componentShares;
  return Object.entries(shares).reduce((sum, [component, share]) => {
    const care = file.care[component] as unknown as CareOfFile;
    const { firstYearHoursPer1000SqFt: first, matureHoursPer1000SqFt: mature } = care;
    const yearly = mature + (first - mature) * Math.exp(-care.decayPerYear * (age - 1));
    const crop = care.bearing[Math.min(age, care.bearing.length) - 1] ?? 0;
    const picked = care.harvestHoursPer1000SqFt * crop * (care.harvestSeasonShares[season] ?? 0);
    return sum + thousands * share * (yearly * (care.seasonShares[season] ?? 0) + picked);
  }, 0);
}
