import { seasonInstance, type Calendar } from '#domain/calendar.js';
import type { CompostEntry, Plan } from '#domain/plan.js';
import type { Ending, TierResult } from '#domain/tier.js';
import { centiToHours } from '#units/centihours.js';
import { centiToYards } from '#units/centiyards.js';
import { centsToDollars } from '#units/cents.js';
import { fromPlacement } from '../conversion/lives.js';
import { fromFiscalYear, optional } from '../conversion/values.js';
import { PLAN_FILE_FORMAT, type PlanFile, type PlanPart } from '../plan-file.schema.js';
import { inOrder } from './order.js';

/** What a plan file says beside the plan itself. No time of day is among it. */
export interface PlanOrigin {
  readonly campus: PlanFile['campus'];
  readonly solver: PlanFile['solver'];
  readonly ending: Ending & PlanFile['ending'];
  readonly tiers: readonly TierResult[];
}

/** The file of a plan. Equal plans give equal files, whatever the order of their rows. */
export function fromPlan(plan: Plan, calendar: Calendar, origin: PlanOrigin): PlanFile {
  return {
    format: PLAN_FILE_FORMAT,
    formatVersion: 1,
    campus: origin.campus,
    solver: origin.solver,
    ending: origin.ending,
    tiers: origin.tiers.map((tier) => ({ ...tier })),
    plan: inOrder(planPart(plan, calendar), calendar),
  };
}

function planPart(plan: Plan, calendar: Calendar): PlanPart {
  const { placements, hires, workDays, purchases } = plan.decisions;
  const when = (index: number) => {
    const { year, season } = seasonInstance(calendar, index);
    return { year: fromFiscalYear(year), season: season.id };
  };
  return {
    placements: placements.map(fromPlacement),
    hires: hires.map(inFileYear),
    workDays: workDays.map(inFileYear),
    compostPurchases: purchases.map(({ season, ...bought }) => ({ ...when(season), ...bought })),
    labor: plan.labor.map(({ season, source, taskClass, hours }) => ({
      ...when(season),
      source,
      taskClass,
      hours: centiToHours(hours),
    })),
    unserved: plan.unserved.map(({ season, taskClass, hours }) => ({
      ...when(season),
      taskClass,
      hours: centiToHours(hours),
    })),
    spending: plan.spending.map(({ amount, year, ...same }) => ({
      ...same,
      year: fromFiscalYear(year),
      dollars: centsToDollars(amount),
    })),
    compost: plan.compost.map(({ season, certified, ...all }) => ({
      ...when(season),
      ...heapInYards(all),
      ...optional('certified', certified && heapInYards(certified)),
    })),
  };
}

function heapInYards({ givenAway, stock }: Pick<CompostEntry, 'givenAway' | 'stock'>) {
  return { givenAwayCubicYards: centiToYards(givenAway), stockCubicYards: centiToYards(stock) };
}

function inFileYear<Row extends { year: number }>(row: Row): Omit<Row, 'year'> & { year: string } {
  return { ...row, year: `FY${row.year}` };
}
