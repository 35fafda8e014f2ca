import { plannedSeasons, seasonOrder } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { centiYards, type CentiYards } from '#units/centiyards.js';
import { campusCharges, type CampusCharges } from '../site-charges/campus-charges.js';
import type { SiteCharges } from '../site-charges/site-charges.js';
import { hundredthsFor } from '../site-charges/type-profile.js';
import { caredSeasons, existingLife, type Life } from '../site-charges/life.js';

/** Compost that one season asks for and gets. */
export interface CompostSeason {
  readonly made: CentiYards;
  readonly builds: CentiYards;
  readonly topDress: CentiYards;
}

/**
 * Compost made and needed in every season of horizon and tail, by running index. Top-dressing is
 * summed over all sites first and rounded up to hundredths once.
 */
export function compostNeeds(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges = campusCharges(campus),
): CompostSeason[] {
  const builds = plannedSeasons(campus.calendar).map(() => 0);
  for (const { charges: of, life } of decisions.placements.flatMap((p) => charges.parts(p))) {
    const { prepared } = life;
    if (prepared !== undefined) builds[prepared] = (builds[prepared] ?? 0) + of.buildCompost;
  }
  const dressed = topDressNeeds(campus, decisions, charges);
  return plannedSeasons(campus.calendar).map(({ season, index }) => ({
    made: campus.compost.made[season.id] ?? centiYards(0),
    builds: centiYards(builds[index] ?? 0),
    topDress: centiYards(hundredthsFor(dressed[index] ?? 0)),
  }));
}

/** Top-dressing of all sites by running season index, exact, in fine parts of a cubic yard. */
export function topDressNeeds(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): number[] {
  const seasons = plannedSeasons(campus.calendar).map(() => 0);
  const dress = (life: Life, of: SiteCharges) => {
    for (const index of topDressSeasons(campus, life)) {
      seasons[index] = (seasons[index] ?? 0) + of.areaSqFt * of.profile.topDress;
    }
  };
  for (const site of campus.existing) {
    dress(existingLife(campus, site), charges.of(site.id, site.buildType));
  }
  for (const { charges: of, life } of decisions.placements.flatMap((p) => charges.parts(p))) {
    dress(life, of);
  }
  return seasons;
}

/** Seasons in which a site is top-dressed: once a year, from the age that the campus sets. */
export function topDressSeasons(campus: Campus, life: Life): number[] {
  const { topDressSeason, topDressFromAge } = campus.compost;
  const order = seasonOrder(campus.calendar, topDressSeason);
  return caredSeasons(campus.calendar, life)
    .filter((s) => s.order === order && s.age >= topDressFromAge)
    .map((s) => s.index);
}
