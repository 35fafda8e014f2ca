import type { Lifecycle } from '#rules/columns.js';
import { clearHires } from '../search/clear-hires.js';
import { hireForGaps } from '../search/hire-for-gaps.js';
import { allPaid, applyHire, applyLife, purchasesOf, type SearchState } from '../search/state.js';
import { admissible } from './admissible.js';

/** Adds a life with the people and compost it needs; leaves the state as it was where that fails. */
export function tryLife(state: SearchState, life: Lifecycle): boolean {
  const before = state.hires.map((byYear) => Int32Array.from(byYear));
  applyLife(state, life, 1);
  // Most lives fail for money alone, and that is soonest known.
  if (state.money.paid(state.costs) && isServed(state, life.life.prepared)) return true;
  applyLife(state, life, -1);
  restoreHires(state, before);
  return false;
}

/** Places the first of these lives that may join the others and is served; true where one was. */
export function placeFirst(state: SearchState, lives: readonly Lifecycle[]): boolean {
  const { campus } = state.tables.ground;
  return lives.some((life) => admissible(campus, state.lives, life) && tryLife(state, life));
}

/** Puts back the lives of a plan that was served. */
export function restoreLives(state: SearchState, before: ReadonlySet<Lifecycle>): void {
  for (const life of [...state.lives]) if (!before.has(life)) applyLife(state, life, -1);
  for (const life of before) if (!state.lives.has(life)) applyLife(state, life, 1);
  clearHires(state);
  if (!isServed(state)) throw new Error('a plan that was served is not when it is put back');
}

/** Completes hires; true where labor, compost and money then hold in every season and year. */
export function isServed(state: SearchState, fromSeason = 0): boolean {
  if (hireForGaps(state, fromSeason)) return false;
  const purchases = purchasesOf(state);
  return purchases !== undefined && allPaid(state, purchases);
}

function restoreHires(state: SearchState, before: readonly Int32Array[]): void {
  state.hires.forEach((byYear, position) => {
    byYear.forEach((count, startYear) => {
      const change = (before[position]?.[startYear] ?? 0) - count;
      if (change !== 0) applyHire(state, { position, startYear, count: change });
    });
  });
}
