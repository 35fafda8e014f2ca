import type { SeasonInstance } from '#domain/calendar.js';
import { MAY_GO_UNSERVED, TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import type { LaborSource } from '#estimating/season-supply/sources.js';
import { allocateSeason } from '#optimizer/allocate/labor.js';
import { centiHours, centiToHours } from '#units/centihours.js';

export type SeasonNeeds = Readonly<Record<TaskClass, number>>;

/**
 * Hours of these people that a season can use: all that must be done is done first, then as much
 * care as they could give if there were no end of it. Hours of those who may do neither are left out.
 */
export function usableHours(
  season: SeasonInstance,
  needs: SeasonNeeds,
  sources: readonly LaborSource[],
): number {
  const used = usedBySource(season, needs, sources).values();
  return centiToHours(centiHours([...used].reduce((sum, hours) => sum + hours, 0)));
}

/** The same by source, in hours; a source of which nothing can be used is left out. */
export function usableBySource(
  season: SeasonInstance,
  needs: SeasonNeeds,
  sources: readonly LaborSource[],
): ReadonlyMap<string, number> {
  const used = usedBySource(season, needs, sources);
  return new Map([...used].map(([source, hours]) => [source, centiToHours(centiHours(hours))]));
}

/** In hundredths of an hour. */
function usedBySource(
  season: SeasonInstance,
  needs: SeasonNeeds,
  sources: readonly LaborSource[],
): ReadonlyMap<string, number> {
  const all = sources.reduce((sum, source) => sum + source.hours, 0);
  const endless = Object.fromEntries(
    TASK_CLASSES.map((c) => [c, MAY_GO_UNSERVED.includes(c) ? centiHours(all) : needs[c]]),
  ) as SeasonNeeds;
  const given = new Map<string, number>();
  for (const { source, hours } of allocateSeason(season, endless, sources).labor) {
    given.set(source, (given.get(source) ?? 0) + hours);
  }
  return given;
}

/** Hours of a season's work that these people leave undone, at the least. */
export function undoneHours(
  season: SeasonInstance,
  needs: SeasonNeeds,
  sources: readonly LaborSource[],
): number {
  const { unserved, shortages } = allocateSeason(season, needs, sources);
  const care = unserved.reduce((sum, entry) => sum + entry.hours, 0);
  const work = shortages.reduce((sum, entry) => sum + entry.amount, 0);
  return centiToHours(centiHours(care + work));
}
