import { plannedSeasons, seasonInstance } from '#domain/calendar.js';
import { laterChange, type Campus } from '#domain/campus.js';
import type { PlacedChange } from '#domain/plan.js';
import type { CandidateSite } from '#domain/site.js';
import type { Life } from '#estimating/site-charges/life.js';
import { gatesOpen } from '../eligible-years/columns.js';

/** A site as it is built, and the life of what is planted first. */
export interface Standing {
  readonly site: CandidateSite;
  readonly buildType: string;
  readonly life: Life;
}

/**
 * The later changes that a site may see, each of which gets a column; no other does:
 *
 *     planted + age  <  min(start of works, end of the plan)     for each of the change's ages
 *
 * where the site allows the change, the change fits the type, and gates admit what it becomes.
 */
export function possibleChanges(
  campus: Campus,
  { site, buildType, life }: Standing,
): PlacedChange[] {
  const { calendar } = campus;
  const end = Math.min(life.ends, plannedSeasons(calendar).length);
  return (site.laterChanges ?? [])
    .map((id) => laterChange(campus, id))
    .filter(({ from }) => from === 'any' || from.includes(buildType))
    .flatMap(({ id, ages, buildType: becomes }) =>
      ages.flatMap((age) => {
        const season = life.planted + age * calendar.seasons.length;
        if (season >= end) return [];
        const { year } = seasonInstance(calendar, season);
        if (becomes !== undefined && !gatesOpen(campus, { site, buildType: becomes, year }))
          return [];
        return [{ id, age }];
      }),
    );
}
