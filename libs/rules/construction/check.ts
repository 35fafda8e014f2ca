import { plantIndex, seasonInstance, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import type { ConstructionConflict } from '#domain/site.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Check } from '../check.js';

/**
 * Where works are as certain as the campus's threshold, a site is not built before they are over
 * unless it has repaid its capital when they begin.
 */
export const checkConstruction: Check = (campus, plan) =>
  plan.decisions.placements.flatMap((placement) =>
    campus.construction
      .filter((works) => works.sites.includes(placement.site) && takes(campus, works, placement))
      .map((works) => ({
        rule: 'construction',
        record: placement.site,
        message:
          `${placement.site} is prepared in ${fiscalYearLabel(placement.year)}, but ${works.name} ` +
          `takes it in ${fiscalYearLabel(works.from)} to ${fiscalYearLabel(works.to)} ` +
          `before its ${campus.paybackYears} years are over`,
      })),
  );

function takes(campus: Campus, works: ConstructionConflict, placement: Placement): boolean {
  if (works.certaintyPercent < campus.hardAtCertaintyPercent) return false;
  if (placement.year > works.to) return false;
  const planted = plantIndex(campus.calendar, yearIndexOf(campus.calendar, placement.year));
  const plantedYear = seasonInstance(campus.calendar, planted).year;
  return works.from - plantedYear < campus.paybackYears;
}
