import type { LaborGap } from './labor-test.js';
import type { PositionTable } from './position-table.js';
import { applyHire, firstSeason, type SearchState } from './state.js';

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
 * position closes, or where it is known that the cheapest cannot be paid; `undefined` where all hours are
 * served. Every hire is added to `hired`.
 */
export function hireForGaps(
  state: SearchState,
  { fromSeason = 0, hired = [] }: { readonly fromSeason?: number; readonly hired?: Hired[] } = {},
): LaborGap | undefined {
  const first = Math.max(fromSeason, firstSeason(state));
  for (let season = first; season < state.tables.seasons; season++) {
    for (;;) {
      const gap = gapIn(state, season);
      if (!gap) break;
      const offer = cheapestOffer(state, gap);
      if (!offer || !mayBePaid(state, offer)) return gap;
      const { position, startYear } = offer;
      applyHire(state, { position, startYear, count: 1 });
      hired.push(offer);
    }
  }
  return undefined;
}

function mayBePaid({ tables, money, costs }: SearchState, { position, startYear }: Hired): boolean {
  const bills = tables.positions[position]?.bills(startYear);
  return !bills || money.mayPay(costs, bills);
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

function cheapestOffer({ tables, hires }: SearchState, gap: LaborGap): Offer | undefined {
  let best: Offer | undefined;
  for (let position = 0; position < tables.positions.length; position++) {
    const table = tables.positions[position];
    if (!table || (table.classes & gap.classes) === 0) continue;
    const startYear = table.latestStart(gap.season);
    if (startYear < table.firstStart || !roomIn(table, hires[position], startYear)) continue;
    const given = table.hours(startYear)[gap.season] ?? 0;
    const dollarsPerHour = table.firstCost / Math.min(given, gap.hours);
    if (!best || dollarsPerHour < best.dollarsPerHour)
      best = { position, startYear, dollarsPerHour };
  }
  return best;
}

/** Whether one more of a position may start in a year. */
export function roomFor(state: SearchState, position: number, startYear: number): boolean {
  const table = state.tables.positions[position];
  return table !== undefined && roomIn(table, state.hires[position], startYear);
}

function roomIn({ type }: PositionTable, byYear: Int32Array | undefined, startYear: number) {
  if (!byYear) return false;
  if (type.term !== 'recurring') return (byYear[startYear] ?? 0) < type.most;
  let held = 0;
  for (const count of byYear) held += count;
  return held < type.most;
}
