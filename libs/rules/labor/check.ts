import type { Breach } from '#domain/breach.js';
import { plannedSeasons, seasonLabel, type SeasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { MAY_GO_UNSERVED, TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import type { Plan } from '#domain/plan.js';
import { laborNeeds } from '#estimating/plan-needs/labor-needs.js';
import { laborSources } from '#estimating/season-supply/sources.js';
import { groupBy } from '#units/group-by.js';
import type { Check } from '../check.js';

/**
 * In every season of horizon and tail the hours wanted are served or, for care and harvest only,
 * stated as unserved; and each source gives no more hours than it has, to work it may do.
 */
export const checkLabor: Check = (campus, plan) => {
  const needs = laborNeeds(campus, plan.decisions);
  return [
    ...strayEntries(plan, needs.length),
    ...plannedSeasons(campus.calendar).flatMap((season) => [
      ...needBreaches({ campus, plan, season, needs: needs[season.index] }),
      ...sourceBreaches(campus, plan, season),
    ]),
  ];
};

function breach(record: string, message: string): Breach {
  return { rule: 'labor', record, message };
}

function strayEntries(plan: Plan, seasons: number): Breach[] {
  return [...plan.labor, ...plan.unserved]
    .filter((e) => !(e.season >= 0 && e.season < seasons) || e.hours <= 0)
    .map((e) =>
      breach(
        `entry for season ${e.season}`,
        `an entry of ${e.hours / 100} h lies outside the plan or is not above 0`,
      ),
    );
}

interface SeasonNeeds {
  readonly campus: Campus;
  readonly plan: Plan;
  readonly season: SeasonInstance;
  readonly needs: Readonly<Record<TaskClass, number>> | undefined;
}

function needBreaches({ campus, plan, season, needs }: SeasonNeeds): Breach[] {
  const label = seasonLabel(campus.calendar, season);
  return TASK_CLASSES.flatMap((taskClass) => {
    const wanted = needs?.[taskClass] ?? 0;
    const served = sum(
      plan.labor.filter((e) => e.season === season.index && e.taskClass === taskClass),
    );
    const unserved = sum(
      plan.unserved.filter((e) => e.season === season.index && e.taskClass === taskClass),
    );
    if (unserved > 0 && !MAY_GO_UNSERVED.includes(taskClass)) {
      return [
        breach(
          label,
          `${unserved / 100} h of ${taskClass} are left unserved in ${label}; this work must be done`,
        ),
      ];
    }
    if (served + unserved === wanted) return [];
    return [
      breach(
        label,
        `${taskClass} wants ${wanted / 100} h in ${label}; ${served / 100} h are served and ${unserved / 100} h stated as unserved`,
      ),
    ];
  });
}

function sum(entries: readonly { hours: number }[]): number {
  return entries.reduce((total, e) => total + e.hours, 0);
}

function sourceBreaches(campus: Campus, plan: Plan, season: SeasonInstance): Breach[] {
  const label = seasonLabel(campus.calendar, season);
  const sources = new Map(laborSources(campus, plan.decisions, season).map((s) => [s.id, s]));
  const entries = plan.labor.filter((e) => e.season === season.index);
  return [...groupBy(entries, (entry) => entry.source)].flatMap(([id, given]) => {
    const source = sources.get(id);
    const total = sum(given);
    if (!source || total > source.hours) {
      return [
        breach(
          label,
          `${id} gives ${total / 100} h in ${label} and has ${(source?.hours ?? 0) / 100} h`,
        ),
      ];
    }
    return given
      .filter((e) => !source.tasks.includes(e.taskClass))
      .map((e) =>
        breach(label, `${source.name} may not do ${e.taskClass} (${e.hours / 100} h in ${label})`),
      );
  });
}
