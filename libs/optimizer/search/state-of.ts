import { yearIndexOf } from '#domain/calendar.js';
import type { Decisions } from '#domain/plan.js';
import { applyLife, emptyState, type SearchState } from './state.js';
import type { Tables } from './tables.js';

/** The state of a plan's sites, with no position hired yet. */
export function stateOf(tables: Tables, decisions: Decisions): SearchState {
  const state = emptyState(tables);
  const { campus, lifecycles } = tables.ground;
  const key = (site: string, type: string, year: number) => `${site} ${type} ${year}`;
  const byKey = new Map(lifecycles.map((l) => [key(l.site, l.buildType, l.yearIndex), l]));
  for (const { site, buildType, year } of decisions.placements) {
    const life = byKey.get(key(site, buildType, yearIndexOf(campus.calendar, year)));
    if (!life) throw new RangeError(`no life of ${site} as ${buildType} in FY${year}`);
    applyLife(state, life, 1);
  }
  return state;
}
