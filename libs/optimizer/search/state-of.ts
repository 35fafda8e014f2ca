import { placementKey, type Decisions } from '#domain/plan.js';
import { yearIndexOf } from '#domain/calendar.js';
import { applyHire, applyLife, emptyState, type SearchState } from './state.js';
import type { Tables } from './tables.js';

/** The state of a plan's sites, with no position hired yet. */
export function stateOf(tables: Tables, decisions: Decisions): SearchState {
  const state = emptyState(tables);
  const { lifecycles } = tables.ground;
  const byKey = new Map(lifecycles.map((l) => [placementKey(l.placement), l]));
  for (const placement of decisions.placements) {
    const { site, buildType, year } = placement;
    const life = byKey.get(placementKey(placement));
    if (!life) throw new RangeError(`no life of ${site} as ${buildType} in FY${year}`);
    applyLife(state, life, 1);
  }
  return state;
}

/** The state of a plan's sites with the people of the plan. */
export function staffedStateOf(tables: Tables, decisions: Decisions): SearchState {
  const state = stateOf(tables, decisions);
  hireAs(state, decisions);
  return state;
}

/** Hires whom a plan hires in open years. */
export function hireAs(state: SearchState, { hires }: Decisions): void {
  const { campus } = state.tables.ground;
  for (const { position: id, year, count } of hires) {
    const startYear = yearIndexOf(campus.calendar, year);
    const position = campus.positions.findIndex((p) => p.id === id);
    if (startYear >= state.tables.firstOpenYear) applyHire(state, { position, startYear, count });
  }
}
