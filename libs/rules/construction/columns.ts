import { seasonInstance, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Life } from '#estimating/site-charges/life.js';

/**
 * Ground that works would take, or that sure works would cut short, gets no column:
 *
 *     x[l] = 0  where  prepared(l) <= to[w]  and  planted(l) >= from[w]             for works w on its site
 *     x[l] = 0  where  prepared(l) <= to[w]  and  from[w] - planted(l) < payback    for sure w, unless temporary
 */
export function freeOfWorks(campus: Campus, site: string, life: Life): boolean {
  const { calendar } = campus;
  const prepared = seasonInstance(calendar, life.prepared ?? life.planted).yearIndex;
  const planted = seasonInstance(calendar, life.planted).yearIndex;
  const temporary = campus.candidates.find((s) => s.id === site)?.temporary ?? false;
  return campus.construction.every((works) => {
    if (!works.sites.includes(site) || prepared > yearIndexOf(calendar, works.to)) return true;
    const sure = works.certaintyPercent >= campus.hardAtCertaintyPercent && !temporary;
    const stands = yearIndexOf(calendar, works.from) - planted;
    return stands > 0 && (!sure || stands >= campus.paybackYears);
  });
}
