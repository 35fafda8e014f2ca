import { plannedSeasons, plannedYears, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { PositionType } from '#domain/labor.js';
import { positionCostIn } from '#estimating/plan-needs/money-needs.js';
import { firstOpenYear } from '#rules/stability/frozen.js';
import { firstStartYear, positionHours } from '#estimating/season-supply/positions.js';

/** One position type with its hours and costs looked up by number. */
export interface PositionTable {
  readonly type: PositionType;
  /** First year index in which a search may start one: lead time, frozen years and promises that it waits. */
  readonly firstStart: number;
  /** Hundredths of an hour in a season, started in a year (index). */
  readonly hours: (startYear: number, season: number) => number;
  /** First season (index) in which one that starts in a year gives hours. */
  readonly firstSeason: (startYear: number) => number;
  /** Cents in a year, started in a year (indexes). */
  readonly cost: (startYear: number, year: number) => number;
}

export function positionTable(campus: Campus, type: PositionType): PositionTable {
  const { calendar } = campus;
  const years = plannedYears(calendar);
  const seasons = plannedSeasons(calendar);
  const costs = new Float64Array(years * years);
  const hours = new Int32Array(years * seasons.length);
  for (let startYear = 0; startYear < years; startYear++) {
    for (let yearIndex = startYear; yearIndex < years; yearIndex++) {
      costs[startYear * years + yearIndex] = positionCostIn({
        campus,
        position: type,
        startYear,
        yearIndex,
      });
    }
    for (const season of seasons) {
      hours[startYear * seasons.length + season.index] = positionHours(calendar, type, {
        startYear,
        season,
      });
    }
  }
  const firstSeasons = Int32Array.from({ length: years }, (_, startYear) => {
    const row = hours.subarray(startYear * seasons.length, (startYear + 1) * seasons.length);
    const first = row.findIndex((h) => h > 0);
    return first < 0 ? seasons.length : first;
  });
  return {
    type,
    firstSeason: (startYear) => firstSeasons[startYear] ?? seasons.length,
    firstStart: firstAllowed(campus, type),
    hours: (startYear, season) => hours[startYear * seasons.length + season] ?? 0,
    cost: (startYear, year) => costs[startYear * years + year] ?? 0,
  };
}

function firstAllowed(campus: Campus, type: PositionType): number {
  const first = Math.max(firstStartYear(campus.calendar, type), firstOpenYear(campus));
  if (type.term !== 'recurring') return first;
  return campus.commitments.reduce(
    (latest, { test, strength }) =>
      test.kind === 'no-new-positions-before' && strength !== 'aspiration'
        ? Math.max(latest, yearIndexOf(campus.calendar, test.year))
        : latest,
    first,
  );
}
