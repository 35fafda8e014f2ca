import { seasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Hire, Placement } from '#domain/plan.js';
import type { PublishedPlacement } from '#domain/published-plan.js';
import { changeSeason } from '#estimating/site-charges/placed-parts.js';
import type { FiscalYear } from '#units/fiscal-year.js';

/** Last frozen year; -Infinity where none is. */
export function frozenThrough({ published }: Campus): number {
  return published?.frozenThrough ?? -Infinity;
}

/** Index of the first year that is not frozen, 0 or more. */
export function firstOpenYear(campus: Campus): number {
  const last = frozenThrough(campus);
  return Number.isFinite(last) ? Math.max(0, last - campus.calendar.firstYear + 1) : 0;
}

/** The published placement of a site within the years that are planned. */
export function publishedPlacement(campus: Campus, site: string): PublishedPlacement | undefined {
  return campus.published?.placements.find(
    (p) => p.site === site && p.year >= campus.calendar.firstYear,
  );
}

/** Sites that were published for a frozen year. */
export function frozenSites(campus: Campus): string[] {
  const last = frozenThrough(campus);
  return (campus.published?.placements ?? [])
    .filter((p) => p.year <= last && p.year >= campus.calendar.firstYear)
    .map((p) => p.site);
}

/** What a placement decides in the frozen years, as a text: equal texts, equal decisions. */
export function frozenPart(campus: Campus, placement: Placement | undefined): string {
  if (!placement) return '';
  const last = frozenThrough(campus);
  const { buildType, year, secondHalf, change } = placement;
  const decided: (string | FiscalYear)[] = [];
  if (year <= last) decided.push(buildType, year);
  if (secondHalf !== undefined && secondHalf <= last) decided.push('then', secondHalf);
  const season = changeSeason(campus, placement);
  if (change && season !== undefined && seasonInstance(campus.calendar, season).year <= last)
    decided.push(change.id, String(change.age));
  return decided.join(' ');
}

/** Hires that were published for the frozen years. */
export function frozenHires(campus: Campus): readonly Hire[] {
  const last = frozenThrough(campus);
  const { firstYear } = campus.calendar;
  return campus.published?.hires.filter((h) => h.year >= firstYear && h.year <= last) ?? [];
}
