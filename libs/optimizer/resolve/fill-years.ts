import type { Lifecycle } from '#rules/columns.js';
import { shuffled, type Random } from '#units/random.js';
import { countsInYear, mustHave, promisedByYear } from '../construct/musts.js';
import { isServed } from '../construct/try-life.js';
import { Checkpoint } from '../search/checkpoint.js';
import { clearHires } from '../search/clear-hires.js';
import { applyLife, type SearchState } from '../search/state.js';

/** Ways that are tried for each year that lacks a site, before it is left to the search. */
const MOST_WAYS = 6;

interface Move {
  readonly from?: Lifecycle;
  readonly to: Lifecycle;
}

/**
 * Fills promised years that a mended plan left empty: by a site that is not built, or by a chain of sites
 * that each take the year before them, from a year that has more than it needs (shortest chains first).
 * What no chain fills, or what then cannot be served, stays as it was.
 */
export function fillPromisedYears(state: SearchState, random: Random): void {
  const { horizonYears } = state.tables.ground.campus.calendar;
  for (let year = 0; year < horizonYears; year++) {
    for (let way = 0; way < MOST_WAYS && lacksIn(state, year) > 0; way++) {
      const moves = chainInto(state, year, random);
      if (moves) applyOrUndo(state, moves);
    }
  }
}

function lacksIn({ lives, tables }: SearchState, year: number): number {
  const have = [...lives].filter((l) => countsInYear(tables, l) === year).length;
  return (promisedByYear(tables)[year] ?? 0) - have;
}

/** Breadth first over years: a chain ends at a site not built, or in a year with one to spare. */
function chainInto(state: SearchState, year: number, random: Random): Move[] | undefined {
  const { lifecycles } = state.tables.ground;
  const placed = new Map([...state.lives].map((l) => [l.site, l]));
  const groups = mustHave(state.tables, 'binding');
  const seen = new Set([year]);
  let front: { readonly year: number; readonly moves: readonly Move[] }[] = [{ year, moves: [] }];
  while (front.length > 0) {
    const next: typeof front = [];
    for (const { year: empty, moves } of front) {
      for (const to of shuffled(
        random,
        lifecycles.filter((l) => countsInYear(state.tables, l) === empty),
      )) {
        const from = placed.get(to.site);
        if (moves.some((m) => m.to.site === to.site)) continue;
        if (!from) return [...moves, { to }];
        if (seen.has(from.yearIndex) || !mayMove(groups, state.lives, { from, to })) continue;
        const chain = [...moves, { from, to }];
        if (lacksIn(state, from.yearIndex) < 0) return chain;
        seen.add(from.yearIndex);
        next.push({ year: from.yearIndex, moves: chain });
      }
    }
    front = next;
  }
  return undefined;
}

/** Whether what must be built is still built after a move. */
function mayMove(
  groups: readonly (readonly Lifecycle[])[],
  lives: ReadonlySet<Lifecycle>,
  { from, to }: Required<Move>,
): boolean {
  return groups.every(
    (group) =>
      !group.includes(from) || group.includes(to) || group.some((l) => l !== from && lives.has(l)),
  );
}

function applyOrUndo(state: SearchState, moves: readonly Move[]): void {
  const before = new Checkpoint(state);
  for (const { from } of moves) if (from) applyLife(state, from, -1);
  for (const { to } of moves) applyLife(state, to, 1);
  clearHires(state);
  if (isServed(state)) return;
  before.putBack();
}
