import { plantIndex, seasonInstance, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { preparedYears } from '#domain/plan.js';
import type { ConstructionConflict } from '#domain/site.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import type { Check } from '../check.js';

/**
 * No ground is prepared or planted while works take it, however sure they are. Where works are as
 * certain as the campus's threshold, a site is not built before them either, unless it will have
 * repaid its capital when they begin or the campus accepts a temporary build there.
 */
export const checkConstruction: Check = (campus, plan) =>
  plan.decisions.placements.flatMap((placement) =>
    preparedYears(placement).flatMap((year) =>
      campus.construction
        .filter((works) => works.sites.includes(placement.site))
        .flatMap((works) => {
          const why = takes(campus, works, { site: placement.site, year });
          if (why === undefined) return [];
          const when = `${fiscalYearLabel(works.from)} to ${fiscalYearLabel(works.to)}`;
          const message = `${placement.site} is prepared in ${fiscalYearLabel(year)}, but ${works.name} takes it in ${when}, ${why}`;
          return [{ rule: 'construction', record: placement.site, message }];
        }),
    ),
  );

interface Prepared {
  readonly site: string;
  readonly year: FiscalYear;
}

/** Why works keep a site from being prepared in a year; `undefined` where they do not. */
function takes(
  campus: Campus,
  works: ConstructionConflict,
  { site, year }: Prepared,
): string | undefined {
  if (year > works.to) return undefined;
  const planted = plantIndex(campus.calendar, yearIndexOf(campus.calendar, year));
  const plantedYear = seasonInstance(campus.calendar, planted).year;
  if (plantedYear >= works.from) return 'before it could be planted';
  if (works.certaintyPercent < campus.hardAtCertaintyPercent) return undefined;
  if (campus.candidates.some((s) => s.id === site && s.temporary)) return undefined;
  const short = works.from - plantedYear < campus.paybackYears;
  return short ? `before its ${campus.paybackYears} years are over` : undefined;
}
