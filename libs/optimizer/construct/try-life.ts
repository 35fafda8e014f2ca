import type { Lifecycle } from '#rules/columns.js';
import { clearHires } from '../search/clear-hires.js';
import { hireForGaps, type Hired } from '../search/hire-for-gaps.js';
import { allPaid, applyHire, applyLife, purchasesOf, type SearchState } from '../search/state.js';
import { admissible } from './admissible.js';

/** Adds a life with the people and compost it needs; leaves the state as it was where that fails. */
export function tryLife(state: SearchState, life: Lifecycle): boolean {
  const hired: Hired[] = [];
  applyLife(state, life, 1);
  // Most lives fail for money alone, and that is soonest known.
  if (
    state.money.paid(state.costs) &&
    isServed(state, { fromSeason: life.life.prepared ?? 0, hired })
  )
    return true;
  applyLife(state, life, -1);
  for (const hire of hired) applyHire(state, { ...hire, count: -1 });
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

/** Completes hires, and adds them to `hired`; true where labor, compost and money then hold everywhere. */
export function isServed(
  state: SearchState,
  how: { readonly fromSeason?: number; readonly hired?: Hired[] } = {},
): boolean {
  if (hireForGaps(state, how)) return false;
  const purchases = purchasesOf(state);
  return purchases !== undefined && allPaid(state, purchases);
}
