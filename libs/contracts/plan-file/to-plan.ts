import { seasonIndex, seasonOrder, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { Problem } from '#domain/problem.js';
import { hoursToCenti } from '#units/centihours.js';
import { yardsToCenti } from '#units/centiyards.js';
import { dollarsToCents } from '#units/cents.js';
import { toHire, toPlacement } from '../conversion/lives.js';
import { optional, toFiscalYear } from '../conversion/values.js';
import type { PlanFile } from '../plan-file.schema.js';
import { planPartProblems } from './plan-problems.js';

export type PlanReading =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The plan of a file, in exact units. Problems where it names what the campus does not have, lies
 * outside the planned years, or is finer than a cent or a hundredth; whether the plan keeps the rules
 * is for their checks to say.
 */
export function toPlan({ plan }: PlanFile, campus: Campus): PlanReading {
  const problems = planPartProblems(plan, campus);
  if (problems.length > 0) return { ok: false, problems };
  const { calendar } = campus;
  const when = ({ year, season }: { year: string; season: string }): number =>
    seasonIndex(calendar, yearIndexOf(calendar, toFiscalYear(year)), seasonOrder(calendar, season));
  return {
    ok: true,
    plan: {
      decisions: {
        placements: plan.placements.map(toPlacement),
        hires: plan.hires.map(toHire),
        workDays: plan.workDays.map(inFiscalYear),
        purchases: plan.compostPurchases.map((row) => ({
          season: when(row),
          ...(row.grade === 'other' ? { grade: row.grade } : {}),
          cubicYards: row.cubicYards,
        })),
      },
      labor: plan.labor.map((row) => ({
        season: when(row),
        source: row.source,
        taskClass: row.taskClass,
        hours: hoursToCenti(row.hours),
      })),
      unserved: plan.unserved.map((row) => ({
        season: when(row),
        taskClass: row.taskClass,
        hours: hoursToCenti(row.hours),
      })),
      spending: plan.spending.map(({ fund, inflow, year, line, site, dollars, repaidBy }) => ({
        fund,
        inflow,
        year: toFiscalYear(year),
        line,
        ...(site === undefined ? {} : { site }),
        amount: dollarsToCents(dollars),
        ...optional('repaidBy', repaidBy),
      })),
      compost: plan.compost.map((row) => ({
        season: when(row),
        ...toHeap(row),
        ...optional('certified', row.certified && toHeap(row.certified)),
      })),
    },
  };
}

function toHeap(row: { givenAwayCubicYards: number; stockCubicYards: number }) {
  return {
    givenAway: yardsToCenti(row.givenAwayCubicYards),
    stock: yardsToCenti(row.stockCubicYards),
  };
}

function inFiscalYear<Row extends { year: string }>(row: Row) {
  return { ...row, year: toFiscalYear(row.year) };
}
