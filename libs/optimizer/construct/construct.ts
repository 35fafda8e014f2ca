import type { Lifecycle } from '#rules/columns.js';
import { settledCare } from '#estimating/site-charges/type-profile.js';
import { emptyState, type SearchState } from '../search/state.js';
import type { Tables } from '../search/tables.js';
import { countsInYear, mustHave, promisedByYear, type NamedStrength } from './musts.js';
import { isServed, placeFirst } from './try-life.js';

/** How a construction orders the lives that it tries. Higher is tried first. */
export type Score = (life: Lifecycle) => number;

/** How a construction goes about it. */
export interface Recipe {
  readonly score: Score;
  /** Which promises of a named site come before the yearly ones: the binding, or the intended as well. */
  readonly namedFirst: NamedStrength;
}

/** Benefit for each hour of settled care: favors light sites that many people pass. */
function benefitPerCareHour(life: Lifecycle): number {
  return life.benefit / (1 + settledHours(life));
}

/** Lightest care first: keeps a yearly promise the longest. */
function lightestCare(life: Lifecycle): number {
  return -settledHours(life);
}

/** Fine parts of the hours a year that a life asks for once its care is settled. */
export function settledHours({ charges }: Lifecycle): number {
  return charges.areaSqFt * settledCare(charges.profile, charges.supplies.length);
}

/**
 * A first plan without a solver: what is fixed or promised by name first, then one site for each
 * promised year, then whatever else fits, always with all care served and every cost paid.
 * `undefined` where even the fixed and promised ones do not fit so.
 */
export function construct(tables: Tables, { score, namedFirst }: Recipe): SearchState | undefined {
  const state = emptyState(tables);
  if (!isServed(state)) return undefined;
  for (const group of mustHave(tables, namedFirst)) {
    if (group.some((l) => state.lives.has(l))) continue;
    if (!placeFirst(state, ordered(group, score))) return undefined;
  }
  const { campus, lifecycles } = tables.ground;
  for (let year = 0; year < campus.calendar.horizonYears; year++) {
    const lives = ordered(
      lifecycles.filter((l) => countsInYear(tables, l) === year),
      score,
    );
    const wanted = promisedByYear(tables)[year] ?? 0;
    for (let have = countIn(state, year); have < wanted; have++)
      if (!placeFirst(state, lives)) break;
  }
  fillUp(state, score);
  return state;
}

function fillUp(state: SearchState, score: Score): void {
  const open = new Set(state.tables.ground.lifecycles.map((l) => l.site));
  for (const l of state.lives) open.delete(l.site);
  for (const site of open) {
    const lives = state.tables.ground.lifecycles.filter((l) => l.site === site);
    placeFirst(state, ordered(lives, score));
  }
}

function ordered(lives: readonly Lifecycle[], score: Score): Lifecycle[] {
  return lives
    .map((life) => ({ life, value: score(life) }))
    .sort(
      (a, b) =>
        b.value - a.value ||
        a.life.yearIndex - b.life.yearIndex ||
        (a.life.site < b.life.site ? -1 : Number(a.life.site > b.life.site)),
    )
    .map(({ life }) => life);
}

function countIn(state: SearchState, year: number): number {
  return [...state.lives].filter((l) => countsInYear(state.tables, l) === year).length;
}

/** Recipes in the order in which they are worth trying. */
export const RECIPES: readonly Recipe[] = [
  { score: lightestCare, namedFirst: 'intended' },
  { score: lightestCare, namedFirst: 'binding' },
  { score: benefitPerCareHour, namedFirst: 'intended' },
];
