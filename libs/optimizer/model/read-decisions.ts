import { yearAt } from '#domain/calendar.js';
import type { Decisions } from '#domain/plan.js';
import type { Columns } from '#rules/columns.js';
import { sortDecisions } from '../allocate/complete-plan.js';

/** The decisions that a point of the model stands for, read through the columns that built it. */
export function readDecisions(columns: Columns, values: ArrayLike<number>): Decisions {
  const { calendar } = columns.campus;
  const whole = (column: number) => Math.round(values[column] ?? 0);
  const counted = <T extends { variable: { column: number } }>(list: readonly T[]) =>
    list.map((of) => ({ of, count: whole(of.variable.column) })).filter(({ count }) => count > 0);
  return sortDecisions({
    placements: counted(columns.lifecycles).map(({ of }) => of.placement),
    hires: counted(columns.hires).map(({ of, count }) => ({
      position: of.position.id,
      year: yearAt(calendar, of.yearIndex),
      count,
    })),
    workDays: counted(columns.workDays).map(({ of, count }) => ({
      workDay: of.day.id,
      year: yearAt(calendar, of.yearIndex),
      count,
    })),
    purchases: counted(columns.purchases).map(({ of, count }) => ({
      season: of.season,
      ...(of.grade === 'other' ? { grade: of.grade } : {}),
      cubicYards: count,
    })),
  });
}
