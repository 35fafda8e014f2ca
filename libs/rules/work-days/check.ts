import { plannedYears, yearIndexOf } from '#domain/calendar.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Check } from '../check.js';

/** Work days are whole, of a known kind, once a line for each year, and no more than the season takes. */
export const checkWorkDays: Check = (campus, plan) => {
  const seen = new Set<string>();
  return plan.decisions.workDays.flatMap((held) => {
    const day = campus.workDays.find((d) => d.id === held.workDay);
    const key = `${held.workDay} ${held.year}`;
    const twice = seen.has(key);
    seen.add(key);
    const year = yearIndexOf(campus.calendar, held.year);
    const inPlan = year >= 0 && year < plannedYears(campus.calendar);
    if (
      day &&
      !twice &&
      inPlan &&
      Number.isInteger(held.count) &&
      held.count > 0 &&
      held.count <= day.mostPerSeason
    ) {
      return [];
    }
    const limit = day
      ? `at most ${day.mostPerSeason} may be held, once a line for each year of the plan`
      : 'it is not a work day of this campus';
    return [
      {
        rule: 'work-days',
        record: held.workDay,
        message: `${held.count} of ${day?.name ?? held.workDay} in ${fiscalYearLabel(held.year)}: ${limit}`,
      },
    ];
  });
};
