import { plannedSeasons, seasonLabel } from '#domain/calendar.js';
import { laborNeeds } from '#estimating/plan-needs/labor-needs.js';
import { laborSources } from '#estimating/season-supply/sources.js';
import { centiHours, centiToHours } from '#units/centihours.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import type { SeasonRow } from '../plan-overview.js';
import { careByAge } from './care-by-age.js';
import { undoneHours, usableHours } from './usable-hours.js';

/** Every season of the plan and of the years after it in which what was built is still cared for. */
export function seasonRows(ground: Ground): SeasonRow[] {
  const { campus, plan, charges } = ground;
  const needs = laborNeeds(campus, plan.decisions, charges);
  const care = careByAge(ground);
  const withoutHires = { ...plan.decisions, hires: [] };
  return plannedSeasons(campus.calendar).map((season) => {
    const wanted = needs[season.index];
    const byAge = care[season.index];
    if (!wanted || !byAge) throw new RangeError(`no needs in season ${season.index}`);
    const now = laborSources(campus, withoutHires, season);
    const proposed = laborSources(campus, plan.decisions, season);
    return {
      index: season.index,
      year: fiscalYearLabel(season.year),
      season: season.season.id,
      label: seasonLabel(campus.calendar, season),
      careByAge: byAge,
      buildHours: centiToHours(centiHours(wanted.prepare + wanted.plant)),
      superviseHours: centiToHours(wanted.supervise),
      supplyNow: usableHours(season, wanted, now),
      supplyProposed: usableHours(season, wanted, proposed),
      shortNow: undoneHours(season, wanted, now),
      unserved: unservedIn(ground, season.index),
      afterHorizon: season.yearIndex >= campus.calendar.horizonYears,
    };
  });
}

function unservedIn({ plan }: Ground, season: number): number {
  const entries = plan.unserved.filter((entry) => entry.season === season);
  return centiToHours(centiHours(entries.reduce((sum, entry) => sum + entry.hours, 0)));
}

/** All hours that a season asks for. */
export function wantedHours({ careByAge: care, buildHours, superviseHours }: SeasonRow): number {
  return care.year1 + care.year2 + care.year3 + care.mature + buildHours + superviseHours;
}
