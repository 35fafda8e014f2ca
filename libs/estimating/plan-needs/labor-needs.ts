import { plannedSeasons, seasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import type { Decisions } from '#domain/plan.js';
import { centiHours, type CentiHours } from '#units/centihours.js';
import { workDaysHeld } from '../season-supply/sources.js';
import type { SiteCharges } from '../site-charges/site-charges.js';
import { CARE_CLASSES, hundredthsFor, type CareClass } from '../site-charges/type-profile.js';
import { campusCharges, type CampusCharges } from '../site-charges/campus-charges.js';
import { caredSeasons, existingLife, type Life } from '../site-charges/life.js';

/** Hours wanted, by running season index and class of work. */
export type LaborNeeds = readonly Readonly<Record<TaskClass, CentiHours>>[];

/**
 * Hours that a plan's sites, existing ones included, and its work days ask for in every season. Care
 * is summed over all sites first and rounded up to hundredths once.
 */
export function laborNeeds(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges = campusCharges(campus),
): LaborNeeds {
  const needs = plannedSeasons(campus.calendar).map(() => emptyNeeds());
  for (const { charges: of, life } of decisions.placements.flatMap((p) => charges.parts(p))) {
    if (life.prepared !== undefined) add(needs[life.prepared], 'prepare', of.prepareHours);
    add(needs[life.planted], 'plant', of.plantHours);
  }
  careNeeds(campus, decisions, charges).forEach((fine, season) => {
    for (const c of CARE_CLASSES) add(needs[season], c, hundredthsFor(fine[c]));
  });
  addSupervision(campus, decisions, needs);
  return needs;
}

/** Care of all sites by running season index and class, exact, in fine parts of an hour. */
export function careNeeds(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): Record<CareClass, number>[] {
  const care = plannedSeasons(campus.calendar).map(() => ({
    'care-food': 0,
    'care-other': 0,
    harvest: 0,
  }));
  for (const site of campus.existing) {
    addCare({
      campus,
      care,
      of: charges.of(site.id, site.buildType),
      life: existingLife(campus, site),
    });
  }
  for (const { charges: of, life } of decisions.placements.flatMap((p) => charges.parts(p))) {
    addCare({ campus, care, of, life });
  }
  return care;
}

type Draft = Record<TaskClass, CentiHours>;

function emptyNeeds(): Draft {
  return Object.fromEntries(TASK_CLASSES.map((c) => [c, centiHours(0)])) as Draft;
}

function add(season: Draft | undefined, taskClass: TaskClass, hours: number): void {
  if (season) season[taskClass] = centiHours(season[taskClass] + hours);
}

interface SiteCare {
  readonly campus: Campus;
  /** Fine parts of an hour by season and class. */
  readonly care: Record<CareClass, number>[];
  readonly of: SiteCharges;
  readonly life: Life;
}

function addCare({ campus, care, of, life }: SiteCare): void {
  for (const { index, age, order } of caredSeasons(campus.calendar, life)) {
    const season = care[index];
    if (!season) continue;
    for (const c of CARE_CLASSES) season[c] += of.areaSqFt * of.profile.care(c, age, order);
  }
}

function addSupervision(campus: Campus, decisions: Decisions, needs: Draft[]): void {
  needs.forEach((season, index) => {
    const instance = seasonInstance(campus.calendar, index);
    for (const day of campus.workDays) {
      if (day.season !== instance.season.id) continue;
      add(season, 'supervise', day.leaderHoursEach * workDaysHeld(decisions, day.id, instance));
    }
  });
}
