import type { Lifecycle } from '#rules/columns.js';
import { hireForGaps } from '../search/hire-for-gaps.js';
import { allPaid, applyHire, applyLife, purchasesOf, type SearchState } from '../search/state.js';

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
