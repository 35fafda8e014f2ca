import type { Lifecycle } from '#rules/columns.js';
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

/** What a search goes back to: the lives and the people of a state. */
export interface Snapshot {
  readonly lives: ReadonlySet<Lifecycle>;
  /** Positions at [position][start year]. */
  readonly hires: readonly Int32Array[];
}

export function snapshotOf(state: SearchState): Snapshot {
  return { lives: new Set(state.lives), hires: state.hires.map((h) => Int32Array.from(h)) };
}

/**
 * Puts a state back. The people too, and not those that a search would hire anew: a plan of the solver
 * may be served by people whom no search finds.
 */
export function restore(state: SearchState, before: Snapshot): void {
  for (const life of [...state.lives]) if (!before.lives.has(life)) applyLife(state, life, -1);
  for (const life of before.lives) if (!state.lives.has(life)) applyLife(state, life, 1);
  state.hires.forEach((byYear, position) => {
    byYear.forEach((held, startYear) => {
      const count = (before.hires[position]?.[startYear] ?? 0) - held;
      if (count !== 0) applyHire(state, { position, startYear, count });
    });
  });
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
