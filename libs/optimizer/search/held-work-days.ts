import { plannedSeasons } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { poolHours } from '#estimating/season-supply/sources.js';

/**
 * Work days of each kind to hold in each season when nothing else is known: all of those that bring
 * more hours than their leaders give, while people who may lead have the hours.
 */
export function heldWorkDays(campus: Campus): Int32Array[] {
  return plannedSeasons(campus.calendar).map((season) => {
    let leaders = campus.pools
      .filter((p) => p.tasks.includes('supervise'))
      .reduce((sum, p) => sum + poolHours(p, season), 0);
    return Int32Array.from(campus.workDays, (day) => {
      if (day.season !== season.season.id || day.hoursEach <= day.leaderHoursEach) return 0;
      const count = Math.min(
        day.mostPerSeason,
        Math.floor(leaders / Math.max(1, day.leaderHoursEach)),
      );
      leaders -= count * day.leaderHoursEach;
      return count;
    });
  });
}
