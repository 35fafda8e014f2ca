import { applyLife, emptyState, type SearchState } from '#optimizer/search/state.js';
import type { Tables } from '#optimizer/search/tables.js';

/**
 * A state after many moves, its money asked about after each: a move names a life, takes the site's life
 * off, and three times in four puts the named one on.
 */
export function wander(tables: Tables, moves: readonly number[]): SearchState {
  const { lifecycles } = tables.ground;
  const state = emptyState(tables);
  for (const move of moves) {
    const life = lifecycles[move];
    if (!life) continue;
    for (const other of [...state.lives]) if (other.site === life.site) applyLife(state, other, -1);
    if (move % 4 > 0) applyLife(state, life, 1);
    state.money.paid(state.costs);
  }
  return state;
}
