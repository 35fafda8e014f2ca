import type { SeasonInstance } from '#domain/calendar.js';
import { TASK_CLASSES } from '#domain/labor.js';
import type { LaborGap } from './labor-test.js';
import { applyHire, type SearchState } from './state.js';

/** One position that was hired, to start in a year (index). */
export interface Hired {
  readonly position: number;
  readonly startYear: number;
}

interface Offer extends Hired {
  readonly dollarsPerHour: number;
}

/**
 * Closes every season's gap with the cheapest positions that can still start in time, as late as
 * they can, from a season on: earlier ones are known to be served. Returns the first gap that no
 * position closes, or none that can be paid; `undefined` where all hours are served. Every hire is added to `hired`.
 */
export function hireForGaps(
  state: SearchState,
  { fromSeason = 0, hired = [] }: { readonly fromSeason?: number; readonly hired?: Hired[] } = {},
): LaborGap | undefined {
  for (const season of state.tables.seasonList) {
    if (season.index < fromSeason) continue;
    for (;;) {
      const gap = gapIn(state, season.index);
      if (!gap) break;
      const offer = cheapestOffer(state, season, gap);
      if (!offer) return gap;
      applyHire(state, { ...offer, count: 1 });
      hired.push(offer);
      // Whoever else is hired costs more still.
      if (!state.money.paid(state.costs)) return gap;
    }
  }
  return undefined;
}

/** The gap of one season; a season that has room for certain is not looked at. */
export function gapIn(state: SearchState, season: number): LaborGap | undefined {
  const { labor, needs, room } = state;
  if ((room[season] ?? -1) >= 0) return undefined;
  const worst = labor.worst(needs, season);
  if (worst.hours > 0) return worst;
  room[season] = -worst.hours;
  return undefined;
}

function cheapestOffer(
  state: SearchState,
  season: SeasonInstance,
  gap: LaborGap,
): Offer | undefined {
  let best: Offer | undefined;
  state.tables.positions.forEach(({ type, hours }, position) => {
    if (!TASK_CLASSES.some((c, i) => gap.classes & (1 << i) && type.tasks.includes(c))) return;
    const startYear = latestStart(state, position, season);
    if (startYear === undefined || !roomFor(state, position, startYear)) return;
    const cost = type.term === 'recurring' ? type.annualCost : type.firstYearCost;
    const dollarsPerHour = cost / Math.min(hours(startYear, season.index), gap.hours);
    if (!best || dollarsPerHour < best.dollarsPerHour)
      best = { position, startYear, dollarsPerHour };
  });
  return best;
}

/** Latest year index in which a position starts and still gives hours in a season. */
function latestStart(
  state: SearchState,
  position: number,
  season: SeasonInstance,
): number | undefined {
  const table = state.tables.positions[position];
  if (!table) return undefined;
  const last = Math.min(season.yearIndex, state.tables.ground.campus.calendar.horizonYears - 1);
  for (let startYear = last; startYear >= Math.max(table.firstStart, last - 1); startYear--) {
    if (table.hours(startYear, season.index) > 0) return startYear;
  }
  return undefined;
}

/** Whether one more of a position may start in a year. */
export function roomFor(state: SearchState, position: number, startYear: number): boolean {
  const type = state.tables.positions[position]?.type;
  const byYear = state.hires[position];
  if (!type || !byYear) return false;
  const held =
    type.term === 'recurring' ? byYear.reduce((a, b) => a + b, 0) : (byYear[startYear] ?? 0);
  return held < type.most;
}
