import { plannedSeasons, seasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import type { Decisions } from '#domain/plan.js';
import { centiHours, type CentiHours } from '#units/centihours.js';
import { workDaysHeld } from '../season-supply/sources.js';
import { CARE_CLASSES, type SiteCharges } from '../site-charges/site-charges.js';
import { campusCharges, type CampusCharges } from '../site-charges/campus-charges.js';
import { caredSeasons, existingLife, lifeOf, type Life } from '../site-charges/life.js';

/** Hours wanted, by running season index and class of work. */
export type LaborNeeds = readonly Readonly<Record<TaskClass, CentiHours>>[];

/** Hours that a plan's sites, existing ones included, and its work days ask for in every season. */
export function laborNeeds(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges = campusCharges(campus),
): LaborNeeds {
  const needs = plannedSeasons(campus.calendar).map(() => emptyNeeds());
  for (const site of campus.existing) {
    addCare({ campus, needs, of: charges.of(site.id, site.buildType), life: existingLife(campus, site) });
  }
  for (const { site, buildType, year } of decisions.placements) {
    const of = charges.of(site, buildType);
    const life = lifeOf(campus, site, year);
    addCare({ campus, needs, of, life });
    if (life.prepared !== undefined) add(needs[life.prepared], 'prepare', of.prepareHours);
    add(needs[life.planted], 'plant', of.plantHours);
  }
  addSupervision(campus, decisions, needs);
  return needs;
}

type Draft = Record<TaskClass, CentiHours>;

function emptyNeeds(): Draft {
  return Object.fromEntries(TASK_CLASSES.map((c) => [c, centiHours(0)])) as Draft;
}

function add(season: Draft | undefined, taskClass: TaskClass, hours: number): void {
  if (season) season[taskClass] = centiHours(season[taskClass] + hours);
}

function addCare(of: { campus: Campus; needs: Draft[]; of: SiteCharges; life: Life }): void {
  for (const { index, age, order } of caredSeasons(of.campus.calendar, of.life)) {
    for (const taskClass of CARE_CLASSES) {
      add(of.needs[index], taskClass, of.of.care(taskClass, age, order));
    }
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
