import type { Campus } from '#domain/campus.js';
import { groundOf } from '#optimizer/columns/ground-of.js';
import type { YearlyPromise } from './prefix.js';

/**
 * Years to which there is a site of its own for every year, by the years in which each may be built
 * (largest matching by augmenting paths, year after year). Where a year finds none, no longer prefix does.
 */
export function yearsWithSites(campus: Campus, { test }: YearlyPromise): number {
  const counts = new Set(
    campus.candidates.filter((c) => c.areaSqFt >= test.countsFromSqFt).map(({ id }) => id),
  );
  const sitesOf = Array.from({ length: campus.calendar.horizonYears }, () => new Set<string>());
  for (const l of groundOf(campus).lifecycles) {
    if (counts.has(l.site)) sitesOf[l.yearIndex]?.add(l.site);
  }
  const yearOf = new Map<string, number>();
  const take = (year: number, seen: Set<string>): boolean =>
    [...(sitesOf[year] ?? [])].some((site) => {
      if (seen.has(site)) return false;
      seen.add(site);
      const other = yearOf.get(site);
      if (other !== undefined && !take(other, seen)) return false;
      yearOf.set(site, year);
      return true;
    });
  const missed = sitesOf.findIndex((_, year) => !take(year, new Set()));
  return missed < 0 ? sitesOf.length : missed;
}
