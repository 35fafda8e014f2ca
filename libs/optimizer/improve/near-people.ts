import { yearIndexOf } from '#domain/calendar.js';
import type { Decisions } from '#domain/plan.js';
import type { Model } from '#mip/model.js';
import type { PlanModel } from '../model/plan-model.js';

/** People that a plan has, by column: of each year, and of each position. The model must count people who stay. */
export function peopleOf(
  { columns, counts }: PlanModel,
  { hires }: Decisions,
): ReadonlyMap<number, number> {
  const { calendar } = columns.campus;
  const hiredIn = (position: string, years: (yearIndex: number) => boolean) =>
    hires
      .filter((h) => h.position === position && years(yearIndexOf(calendar, h.year)))
      .reduce((sum, { count }) => sum + count, 0);
  const people = new Map<number, number>();
  for (const { position, yearIndex, variable } of columns.hires) {
    if (position.term === 'recurring') continue;
    people.set(
      variable.column,
      hiredIn(position.id, (year) => year === yearIndex),
    );
  }
  for (const { held, variable } of counts) {
    if (!held) continue;
    people.set(
      variable.column,
      hiredIn(held.position, (year) => year <= held.yearIndex),
    );
  }
  return people;
}

/**
 * The model of a tier with as many people as a plan has, in each year and of each position, give or take
 * `slack`: with people nearly settled the solver finds good sites for them soon. The model must count
 * people who stay; the plan stays feasible.
 */
export function nearPeople(made: PlanModel, decisions: Decisions, slack: number): Model {
  const { model } = made;
  const lower = Float64Array.from(model.lower);
  const upper = Float64Array.from(model.upper);
  for (const [column, people] of peopleOf(made, decisions)) {
    lower[column] = Math.max(lower[column] ?? 0, people - slack);
    upper[column] = Math.min(upper[column] ?? Infinity, people + slack);
  }
  return { ...model, lower, upper };
}
