import { lastBuildYear } from '#domain/calendar.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Check } from '../check.js';

/** A second half is built only where the site allows it, and in one of the years after the first. */
export const checkPhases: Check = (campus, plan) =>
  plan.decisions.placements.flatMap(({ site: id, year, secondHalf }) => {
    if (secondHalf === undefined) return [];
    const site = campus.candidates.find((s) => s.id === id);
    const most = site?.phasing?.mostYearsApart;
    const apart = secondHalf - year;
    const inTime = Number.isInteger(apart) && apart >= 1 && apart <= (most ?? 0);
    if (inTime && secondHalf <= lastBuildYear(campus.calendar)) return [];
    const allowed =
      most === undefined
        ? `${id} is built at once`
        : `its second half follows 1 to ${most} years after the first, within the horizon`;
    return [
      {
        rule: 'phases',
        record: id,
        message: `the halves of ${id} are prepared in ${fiscalYearLabel(year)} and ${fiscalYearLabel(secondHalf)}; ${allowed}`,
      },
    ];
  });
