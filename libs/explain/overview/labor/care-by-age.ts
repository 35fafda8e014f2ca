import { plannedSeasons } from '#domain/calendar.js';
import { caredSeasons, existingLife, type Life } from '#estimating/site-charges/life.js';
import type { Ground } from '../ground.js';
import type { SeasonRow } from '../plan-overview.js';
import { careHoursAt } from './busy-season.js';

type CareByAge = SeasonRow['careByAge'];

/** Hours of care and harvest of all sites, existing ones included, by season and age of site. */
export function careByAge(ground: Ground): CareByAge[] {
  const { campus, plan, charges } = ground;
  const seasons = plannedSeasons(campus.calendar).map(() => [0, 0, 0, 0]);
  const add = (of: { site: string; buildType: string; share: number }, life: Life) => {
    for (const { index, age, order } of caredSeasons(campus.calendar, life)) {
      const bands = seasons[index];
      const band = Math.min(age, 4) - 1;
      if (bands)
        bands[band] = (bands[band] ?? 0) + of.share * careHoursAt(charges, of, { age, order });
    }
  };
  for (const site of campus.existing) {
    add({ site: site.id, buildType: site.buildType, share: 1 }, existingLife(campus, site));
  }
  for (const part of plan.decisions.placements.flatMap((p) => charges.parts(p))) {
    const { site, buildType } = part.charges;
    add({ site, buildType, share: part.share }, part.life);
  }
  return seasons.map(([year1 = 0, year2 = 0, year3 = 0, mature = 0]) => ({
    year1,
    year2,
    year3,
    mature,
  }));
}
