import { placementKey, type Decisions } from '#domain/plan.js';
import { applyLife, emptyState, type SearchState } from './state.js';
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
