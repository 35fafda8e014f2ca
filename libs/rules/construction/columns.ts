import { seasonInstance, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Life } from '#estimating/site-charges/life.js';

/**
 * A life that sure works would cut short gets no column:
 *
 *     x[l] = 0  where  prepared(l) <= to[w]  and  from[w] - planted(l) < payback   for sure works w on its site
 */
export function freeOfWorks(campus: Campus, site: string, life: Life): boolean {
  const { calendar } = campus;
  const prepared = seasonInstance(calendar, life.prepared ?? life.planted).yearIndex;
  const planted = seasonInstance(calendar, life.planted).yearIndex;
  return campus.construction.every((works) => {
    const sure = works.certaintyPercent >= campus.hardAtCertaintyPercent;
    if (!sure || !works.sites.includes(site)) return true;
    const over = prepared > yearIndexOf(calendar, works.to);
    return over || planted + campus.paybackYears <= yearIndexOf(calendar, works.from);
  });
}
