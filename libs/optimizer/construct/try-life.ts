import type { Lifecycle } from '#rules/columns.js';
import { hireForGaps, type Hired } from '../search/hire-for-gaps.js';
import { allPaid, applyHire, applyLife, purchasesOf, type SearchState } from '../search/state.js';
import { admissible } from './admissible.js';

/** Adds a life with the people and compost it needs; leaves the state as it was where that fails. */
export function tryLife(state: SearchState, life: Lifecycle): boolean {
  // Most lives fail for money alone, and that is soonest known.
  if (!state.money.mayPay(state.costs, state.tables.chargesOf(life).bills)) return false;
  const hired: Hired[] = [];
  const { room } = state;
  const roomBefore = room.slice();
  applyLife(state, life, 1);
  if (isServed(state, { fromSeason: life.life.prepared ?? 0, hired })) return true;
  applyLife(state, life, -1);
  for (const { position, startYear } of hired) applyHire(state, { position, startYear, count: -1 });
  // The same decisions as before have the same room, which would else have to be found again.
  room.set(roomBefore);
  return false;
}

/** Places the first of these lives that may join the others and is served; true where one was. */
export function placeFirst(state: SearchState, lives: readonly Lifecycle[]): boolean {
  const { campus } = state.tables.ground;
  return lives.some((life) => admissible(campus, state.lives, life) && tryLife(state, life));
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
