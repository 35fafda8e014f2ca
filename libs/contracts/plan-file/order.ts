import type { Calendar } from '#domain/calendar.js';
import { COST_LINES } from '#domain/money.js';
import { TASK_CLASSES } from '#domain/labor.js';
import type { PlanPart } from '../plan-file.schema.js';

type Key = string | number;
interface SeasonOfYear {
  readonly year: string;
  readonly season: string;
}

/**
 * The same plan with its rows in one agreed order: by year and season first, then by what they are
 * of. Seasons stand in the order of the calendar.
 */
export function inOrder(plan: PlanPart, { seasons }: Calendar): PlanPart {
  const place = (row: SeasonOfYear): Key[] => [
    row.year,
    seasons.findIndex(({ id }) => id === row.season),
  ];
  const task = (row: { taskClass: (typeof TASK_CLASSES)[number] }): Key =>
    TASK_CLASSES.indexOf(row.taskClass);
  return {
    placements: sorted(plan.placements, (row) => [row.year, row.site, row.buildType]),
    hires: sorted(plan.hires, (row) => [row.year, row.position, row.count]),
    workDays: sorted(plan.workDays, (row) => [row.year, row.workDay, row.count]),
    compostPurchases: sorted(plan.compostPurchases, (row) => [
      ...place(row),
      row.grade ?? '',
      row.cubicYards,
    ]),
    labor: sorted(plan.labor, (row) => [...place(row), row.source, task(row), row.hours]),
    unserved: sorted(plan.unserved, (row) => [...place(row), task(row), row.hours]),
    spending: sorted(plan.spending, (row) => [
      row.year,
      row.fund,
      row.inflow,
      COST_LINES.indexOf(row.line),
      row.site ?? '',
      row.dollars,
      row.repaidBy?.fund ?? '',
      row.repaidBy?.inflow ?? 0,
    ]),
    compost: sorted(plan.compost, (row) => [
      ...place(row),
      row.stockCubicYards,
      row.givenAwayCubicYards,
      row.certified?.stockCubicYards ?? row.stockCubicYards,
      row.certified?.givenAwayCubicYards ?? row.givenAwayCubicYards,
    ]),
  };
}

function sorted<Row>(rows: readonly Row[], keys: (row: Row) => readonly Key[]): Row[] {
  return rows
    .map((row) => ({ row, keys: keys(row) }))
    .sort((a, b) => compare(a.keys, b.keys))
    .map(({ row }) => row);
}

function compare(one: readonly Key[], other: readonly Key[]): number {
  for (const [index, key] of one.entries()) {
    const against = other[index] ?? key;
    if (key < against) return -1;
    if (key > against) return 1;
  }
  return 0;
}
