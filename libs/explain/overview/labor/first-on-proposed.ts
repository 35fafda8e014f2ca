import { plannedSeasons } from '#domain/calendar.js';
import type { Decisions } from '#domain/plan.js';
import { laborNeeds } from '#estimating/plan-needs/labor-needs.js';
import { laborSources } from '#estimating/season-supply/sources.js';
import type { FiscalYear } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import { undoneHours } from './usable-hours.js';

/**
 * The first year whose sites can no longer be cared for, in any season of the plan or after it,
 * without a position that is only proposed. `undefined`: those already there suffice for all.
 *
 * More sites never need fewer hours, so the years are searched by halves.
 */
export function firstYearOnProposed(ground: Ground): FiscalYear | undefined {
  const { years } = ground;
  let [low, high] = [0, years.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const year = years[middle];
    if (year !== undefined && isShort(ground, builtThrough(ground, year))) high = middle;
    else low = middle + 1;
  }
  return years[low];
}

/** The plan's decisions with the sites of the years up to one (included), and with nobody hired. */
export function builtThrough({ plan }: Ground, year: FiscalYear): Decisions {
  const { decisions } = plan;
  return {
    ...decisions,
    placements: decisions.placements.filter((p) => p.year <= year),
    hires: [],
  };
}

function isShort({ campus, charges }: Ground, decisions: Decisions): boolean {
  const needs = laborNeeds(campus, decisions, charges);
  return plannedSeasons(campus.calendar).some((season) => {
    const wanted = needs[season.index];
    if (!wanted) return false;
    return undoneHours(season, wanted, laborSources(campus, decisions, season)) > 0;
  });
}
