import { plannedSeasons, type SeasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { placementKey } from '#domain/plan.js';
import { topDressSeasons } from '#estimating/plan-needs/compost-needs.js';
import { careCosts } from '#estimating/plan-needs/money-needs.js';
import { ageInSeason } from '#estimating/site-charges/life.js';
import { CARE_CLASSES, FINE_PER_HUNDREDTH } from '#estimating/site-charges/type-profile.js';
import type { Lifecycle } from '#rules/columns.js';
import { publishedPlacement } from '#rules/stability/frozen.js';

/**
 * Lives that begin alike, without those that another one beats: the other earns no less, asks for no
 * more in any season and year, and keeps every promise that it keeps. A life that is not changed later
 * keeps at least the promises of one that is, so only it may beat others. What was published stays.
 */
export function withoutDominated(
  campus: Campus,
  lives: readonly Lifecycle[],
): readonly Lifecycle[] {
  const plain = lives.find((l) => !l.placement.change);
  if (!plain || lives.length === 1) return lives;
  const least = usesOf(campus, plain);
  return lives.filter(
    (l) =>
      l === plain ||
      l.benefit > plain.benefit ||
      isPublished(campus, l) ||
      usesOf(campus, l).some((use, i) => use < (least[i] ?? 0)),
  );
}

function isPublished(campus: Campus, { site, placement }: Lifecycle): boolean {
  const published = publishedPlacement(campus, site);
  return published !== undefined && placementKey(published) === placementKey(placement);
}

/** All that a life asks for, in one order: hours, compost, dollars. */
function usesOf(campus: Campus, life: Lifecycle): number[] {
  const seasons = plannedSeasons(campus.calendar);
  return [
    ...seasons.flatMap((season) => hoursIn(campus, life, season)),
    ...compostOf(campus, life, seasons.length),
    ...careCosts(campus, life.parts),
  ];
}

function hoursIn(
  { calendar }: Campus,
  { parts }: Lifecycle,
  { index, order }: SeasonInstance,
): number[] {
  const sum = (hours: (part: Lifecycle['parts'][number], age: number) => number) =>
    parts.reduce((total, part) => total + hours(part, ageInSeason(calendar, part.life, index)), 0);
  return [
    sum(({ life, charges }) =>
      life.planted === index ? charges.plantHours * FINE_PER_HUNDREDTH : 0,
    ),
    ...CARE_CLASSES.map((c) =>
      sum(({ charges }, age) =>
        age > 0 ? charges.areaSqFt * charges.profile.care(c, age, order) : 0,
      ),
    ),
  ];
}

/** Top-dressing by season: all of it, then what must be certified. */
function compostOf(campus: Campus, { parts }: Lifecycle, seasons: number): number[] {
  const used = new Array<number>(2 * seasons).fill(0);
  for (const { life, charges } of parts) {
    const { topDress, compostGrade } = charges.profile;
    for (const season of topDressSeasons(campus, life)) {
      for (const at of compostGrade === 'certified' ? [season, seasons + season] : [season])
        used[at] = (used[at] ?? 0) + charges.areaSqFt * topDress;
    }
  }
  return used;
}
