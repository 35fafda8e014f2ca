import { plannedSeasons, seasonOrder } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { centiYards, type CentiYards } from '#units/centiyards.js';
import { campusCharges, type CampusCharges } from '../site-charges/campus-charges.js';
import { KeptByLife } from '../site-charges/kept.js';
import type { SiteCharges } from '../site-charges/site-charges.js';
import { hundredthsFor } from '../site-charges/type-profile.js';
import { caredSeasons, existingLife, type Life } from '../site-charges/life.js';

/** Compost of both grades that one season asks for and gets. */
export interface CompostSeason {
  readonly made: CentiYards;
  readonly builds: CentiYards;
  readonly topDress: CentiYards;
  /** What of it is made certified, and what must be. */
  readonly certified: { readonly made: CentiYards; readonly needed: CentiYards };
}

/**
 * Compost made and needed in every season of horizon and tail, by running index. Top-dressing is
 * summed over all sites first and rounded up to hundredths once, and once more over those that need
 * certified compost.
 */
export function compostNeeds(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges = campusCharges(campus),
): CompostSeason[] {
  const builds = gradedNeeds(campus);
  for (const { charges: of, life } of decisions.placements.flatMap((p) => charges.parts(p))) {
    if (life.prepared !== undefined) {
      need(builds, { season: life.prepared, amount: of.buildCompost, of });
    }
  }
  const dressed = topDressNeeds(campus, decisions, charges);
  const { made, other } = campus.compost;
  return plannedSeasons(campus.calendar).map(({ season, index }) => {
    const certified = made[season.id] ?? 0;
    return {
      made: centiYards(certified + (other?.made[season.id] ?? 0)),
      builds: centiYards(builds.all[index] ?? 0),
      topDress: centiYards(hundredthsFor(dressed.all[index] ?? 0)),
      certified: {
        made: centiYards(certified),
        needed: centiYards(
          (builds.certified[index] ?? 0) + hundredthsFor(dressed.certified[index] ?? 0),
        ),
      },
    };
  });
}

/** Amounts by running season index: all, and what of it must be certified. */
export interface GradedNeeds {
  readonly all: number[];
  readonly certified: number[];
}

function gradedNeeds({ calendar }: Campus): GradedNeeds {
  const none = () => plannedSeasons(calendar).map(() => 0);
  return { all: none(), certified: none() };
}

function need(
  { all, certified }: GradedNeeds,
  { season, amount, of }: { season: number; amount: number; of: SiteCharges },
): void {
  all[season] = (all[season] ?? 0) + amount;
  if (of.profile.compostGrade !== 'certified') return;
  certified[season] = (certified[season] ?? 0) + amount;
}

/** Top-dressing of all sites by running season index, exact, in fine parts of a cubic yard. */
export function topDressNeeds(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): GradedNeeds {
  const seasons = gradedNeeds(campus);
  const dress = (life: Life, of: SiteCharges) => {
    for (const season of topDressSeasons(campus, life)) {
      need(seasons, { season, amount: of.areaSqFt * of.profile.topDress, of });
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

const dressedLists = new KeptByLife<Campus, readonly number[]>();

/** Seasons in which a site is top-dressed: once a year, from the age that the campus sets. */
export function topDressSeasons(campus: Campus, life: Life): readonly number[] {
  return dressedLists.of(campus, life, () => topDressSeasonsOf(campus, life));
}

function topDressSeasonsOf(campus: Campus, life: Life): number[] {
  const { topDressSeason, topDressFromAge } = campus.compost;
  const order = seasonOrder(campus.calendar, topDressSeason);
  return caredSeasons(campus.calendar, life)
    .filter((s) => s.order === order && s.age >= topDressFromAge)
    .map((s) => s.index);
}
