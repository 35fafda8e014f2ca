import { plannedSeasons, seasonOrder } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { centiYards, type CentiYards } from '#units/centiyards.js';
import { campusCharges, type CampusCharges } from '../site-charges/campus-charges.js';
import { caredSeasons, existingLife, lifeOf, type Life } from '../site-charges/life.js';

/** Compost that one season asks for and gets. */
export interface CompostSeason {
  readonly made: CentiYards;
  readonly builds: CentiYards;
  readonly topDress: CentiYards;
}

/** Compost made and needed in every season of horizon and tail, by running index. */
export function compostNeeds(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges = campusCharges(campus),
): CompostSeason[] {
  const seasons = plannedSeasons(campus.calendar).map(({ season }) => ({
    made: campus.compost.made[season.id] ?? centiYards(0),
    builds: centiYards(0),
    topDress: centiYards(0),
  }));
  const addTopDress = (life: Life, amount: CentiYards) => {
    for (const index of topDressSeasons(campus, life)) {
      const season = seasons[index];
      if (season) season.topDress = centiYards(season.topDress + amount);
    }
  };
  for (const site of campus.existing) {
    addTopDress(existingLife(campus, site), charges.of(site.id, site.buildType).topDress);
  }
  for (const { site, buildType, year } of decisions.placements) {
    const life = lifeOf(campus, site, year);
    const of = charges.of(site, buildType);
    addTopDress(life, of.topDress);
    const prepared = seasons[life.prepared ?? -1];
    if (prepared) prepared.builds = centiYards(prepared.builds + of.buildCompost);
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
