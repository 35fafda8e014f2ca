import { seasonIndex, yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import type { PlanFile } from '#contracts/plan-file.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { smallCampus } from './small-campus.js';

export type Edit = (file: PlanFile) => void;

/** A small campus whose plan must buy compost, hires late and cannot serve all of a summer. */
export function shortCampus() {
  return smallCampus((file) => {
    file.compost.madeCubicYards = { summer: 5, fall: 5, winter: 5, spring: 10 };
    file.compost.openingStockCubicYards = 10;
    file.compost.yardCubicYards = 40;
    file.pools[0]!.hours.summer = 150;
    file.positions[0]!.leadMonths = 20;
    file.funds.find(({ id }) => id === 'operating')!.yearlyInflows![0]!.amountDollars = 200_000;
    file.commitments = file.commitments.filter(({ strength }) => strength === 'binding');
  });
}

/** Two sites, one hire, every work day and two purchases of compost on the short campus. */
export function shortDecisions({ calendar }: Campus): Decisions {
  const inFall = (year: number) => seasonIndex(calendar, year, 1);
  return {
    placements: [
      { site: 'S-1', buildType: 'edible', year: fiscalYear(2028) },
      { site: 'S-2', buildType: 'pollinator', year: fiscalYear(2030) },
    ],
    hires: [{ position: 'second-gardener', year: fiscalYear(2030), count: 1 }],
    workDays: Array.from({ length: calendar.horizonYears + 5 }, (_, i) => ({
      workDay: 'fall-day',
      year: yearAt(calendar, i),
      count: 4,
    })),
    purchases: [
      { season: inFall(0), cubicYards: 60 },
      { season: inFall(2), cubicYards: 20 },
    ],
  };
}

/** The first row that fits; an edit that finds none would test nothing. */
export function first<Row>(rows: Row[], fits: (row: Row) => boolean): Row {
  const row = rows.find(fits);
  if (!row) throw new Error('the plan has no such row to edit');
  return row;
}

export function remove<Row>(rows: Row[], fits: (row: Row) => boolean): void {
  rows.splice(rows.indexOf(first(rows, fits)), 1);
}

/** Two decimals again, after a sum of two such numbers. */
export function twoDecimals(value: number): number {
  return Math.round(value * 100) / 100;
}

/** Keeps in the yard all that was given away, season after season, so that every season still balances. */
export function giveNothingAway({ plan }: PlanFile): void {
  let kept = 0;
  for (const entry of plan.compost) {
    kept += entry.givenAwayCubicYards;
    entry.givenAwayCubicYards = 0;
    entry.stockCubicYards = twoDecimals(entry.stockCubicYards + kept);
  }
}
