import { plannedSeasons, plannedYears, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { TASK_CLASSES, type PositionType } from '#domain/labor.js';
import { positionCostIn } from '#estimating/plan-needs/money-needs.js';
import { firstOpenYear } from '#rules/stability/frozen.js';
import { firstStartYear, positionHours } from '#estimating/season-supply/positions.js';
import { billsOf, type Amounts, type Due } from './life-charges.js';

/** One position type with its hours and costs looked up by number. */
export interface PositionTable {
  readonly type: PositionType;
  /** Classes that it may serve, a bit for each. */
  readonly classes: number;
  /** Cents by which hires are compared: of a full year, or of a term. */
  readonly firstCost: number;
  /** First year index in which a search may start one: lead time, frozen years and promises that it waits. */
  readonly firstStart: number;
  /** Hundredths of an hour by season, started in a year (index). */
  readonly hours: (startYear: number) => Int32Array;
  /** First season (index) in which one that starts in a year gives hours, and the one after the last. */
  readonly firstSeason: (startYear: number) => number;
  readonly endSeason: (startYear: number) => number;
  /** Latest year (index) to start in for hours in a season, be it allowed or not; -1: none. */
  readonly latestStart: (season: number) => number;
  /** What one that starts in a year costs, in cents at [sink x years + year]. */
  readonly bills: (startYear: number) => Amounts;
}

/** @param sink number of the sink that positions are paid from */
export function positionTable(campus: Campus, type: PositionType, sink: number): PositionTable {
  const { calendar } = campus;
  const years = plannedYears(calendar);
  const seasons = plannedSeasons(calendar);
  const byStart = <T>(made: (startYear: number) => T): T[] =>
    Array.from({ length: years }, (_, startYear) => made(startYear));
  const bills = byStart((startYear) =>
    billsOf(
      Array.from({ length: years - startYear }, (_, i): Due => {
        const yearIndex = startYear + i;
        return [sink, yearIndex, positionCostIn({ campus, position: type, startYear, yearIndex })];
      }),
      years,
    ),
  );
  const hours = byStart((startYear) =>
    Int32Array.from(seasons, (season) => positionHours(calendar, type, { startYear, season })),
  );
  const works = (h: number) => h > 0;
  const firstSeasons = hours.map((row) => {
    const first = row.findIndex(works);
    return first < 0 ? seasons.length : first;
  });
  const endSeasons = hours.map((row) => row.findLastIndex(works) + 1);
  const latest = seasons.map(({ index, yearIndex }) => {
    const last = Math.min(yearIndex, calendar.horizonYears - 1);
    return [last, last - 1].find((startYear) => works(hours[startYear]?.[index] ?? 0)) ?? -1;
  });
  const none = { hours: new Int32Array(seasons.length), bills: billsOf([], years) };
  return {
    type,
    classes: TASK_CLASSES.reduce((m, c, i) => (type.tasks.includes(c) ? m | (1 << i) : m), 0),
    firstCost: type.term === 'recurring' ? type.annualCost : type.firstYearCost,
    firstSeason: (startYear) => firstSeasons[startYear] ?? seasons.length,
    endSeason: (startYear) => endSeasons[startYear] ?? 0,
    firstStart: firstAllowed(campus, type),
    latestStart: (season) => latest[season] ?? -1,
    hours: (startYear) => hours[startYear] ?? none.hours,
    bills: (startYear) => bills[startYear] ?? none.bills,
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
