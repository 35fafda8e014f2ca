import { type SeasonInstance } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { LaborPool, TaskClass } from '#domain/labor.js';
import type { Decisions } from '#domain/plan.js';
import { yearIndexOf } from '#domain/calendar.js';
import { centiHours, type CentiHours } from '#units/centihours.js';
import { positionHours } from './positions.js';

const NONE = centiHours(0);

/** Hours that a pool has in a season. */
export function poolHours(pool: LaborPool, season: SeasonInstance): CentiHours {
  if (pool.from !== undefined && season.year < pool.from) return NONE;
  if (pool.to !== undefined && season.year > pool.to) return NONE;
  return pool.hours[season.season.id] ?? NONE;
}

/** People or events that give hours in one season: what a plan has to work with. */
export interface LaborSource {
  readonly id: string;
  readonly name: string;
  readonly tasks: readonly TaskClass[];
  readonly hours: CentiHours;
}

/** Every source with hours in a season under a plan's decisions. */
export function laborSources(
  campus: Campus,
  decisions: Decisions,
  season: SeasonInstance,
): LaborSource[] {
  return [
    ...campus.pools.map((p) => ({
      id: p.id,
      name: p.name,
      tasks: p.tasks,
      hours: poolHours(p, season),
    })),
    ...workDaySources(campus, decisions, season),
    ...positionSources(campus, decisions, season),
  ].filter((source) => source.hours > 0);
}

function workDaySources(
  campus: Campus,
  decisions: Decisions,
  season: SeasonInstance,
): LaborSource[] {
  return campus.workDays
    .filter((day) => day.season === season.season.id)
    .map((day) => ({
      id: day.id,
      name: day.name,
      tasks: day.tasks,
      hours: centiHours(day.hoursEach * workDaysHeld(decisions, day.id, season)),
    }));
}

/** How many work days of a kind are held in the fiscal year of a season. */
export function workDaysHeld(
  decisions: Decisions,
  workDay: string,
  season: SeasonInstance,
): number {
  return decisions.workDays
    .filter((held) => held.workDay === workDay && held.year === season.year)
    .reduce((sum, held) => sum + held.count, 0);
}

function positionSources(
  campus: Campus,
  decisions: Decisions,
  season: SeasonInstance,
): LaborSource[] {
  return campus.positions.map((position) => {
    const hours = decisions.hires
      .filter((hire) => hire.position === position.id)
      .reduce((sum, hire) => {
        const startYear = yearIndexOf(campus.calendar, hire.year);
        return sum + hire.count * positionHours(campus.calendar, position, { startYear, season });
      }, 0);
    return {
      id: position.id,
      name: position.name,
      tasks: position.tasks,
      hours: centiHours(hours),
    };
  });
}
