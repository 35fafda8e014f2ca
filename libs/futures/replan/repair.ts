import { admissible } from '#optimizer/construct/admissible.js';
import { tryLife } from '#optimizer/construct/try-life.js';
import { applyLife, type SearchState } from '#optimizer/search/state.js';
import type { Lifecycle } from '#rules/columns.js';
import type { Basis } from './basis.js';

/** Years ahead, this one included, in which promised years that lost their site are filled. */
const FILLED_YEARS = 5;
/** Years by which a site that does not fit may move. */
const MOST_DELAY = 8;
/** Sites that are tried for one year, before it is left empty. */
const MOST_TRIES = 10;

/** What a repair may choose from. */
export interface Repair {
  readonly basis: Basis;
  readonly state: SearchState;
  readonly year: number;
  /** The plan so far, what was begun left out, in the order of its years. */
  readonly open: readonly Lifecycle[];
  /** Sites of the first plan that have no life any more, in its order. */
  readonly dropped: readonly Lifecycle[];
  /** Whether a life may be begun: the ground is free, and this year has not turned it down yet. */
  readonly mayBegin: (life: Lifecycle) => boolean;
}

/**
 * Repairs what does not hold: takes the sites to come off, and puts them back in the order of the plan
 * where hours, money, compost, and rules still allow it, promised sites first. Years that lost their
 * promised site get another: a site that lost its place, one that was in no plan, or a later one pulled
 * forward. Sites without a place become a cheaper type in their year, or come later.
 */
export function repair(of: Repair): void {
  const { state, open, basis } = of;
  for (const life of open) applyLife(state, life, -1);
  const promised = new Set(basis.musts.flat());
  const inOrder = [...open].sort((a, b) => Number(promised.has(b)) - Number(promised.has(a)));
  const left = inOrder.filter((life) => !place(of, life));
  replace({ ...of, dropped: [...left, ...of.dropped] });
}

/** Gives promised years another site, and sites without a place one that fits. */
export function replace(of: Repair): void {
  fillPromisedYears(of);
  for (const life of of.dropped) if (!hasSite(of.state, life.site)) placeElsewhere(of, life);
}

function place({ state, mayBegin }: Repair, life: Lifecycle): boolean {
  const { campus } = state.tables.ground;
  return mayBegin(life) && admissible(campus, state.lives, life) && tryLife(state, life);
}

function hasSite(state: SearchState, site: string): boolean {
  return [...state.lives].some((l) => l.site === site);
}

/** The same site in its year as a cheaper type, or in the years after it. */
function placeElsewhere(of: Repair, life: Lifecycle): boolean {
  const { basis, year } = of;
  const first = Math.max(year, life.yearIndex);
  for (let at = first; at <= first + MOST_DELAY; at++) {
    if (alike(basis, life, at).some((l) => place(of, l))) return true;
  }
  return false;
}

/** Lives of a site in a year: the type it was meant to be, then cheaper ones, the dearest first. */
function alike(basis: Basis, life: Lifecycle, year: number): Lifecycle[] {
  const cost = (l: Lifecycle) => l.charges.buildCost as number;
  return basis
    .plainLives(life.site, year)
    .filter((l) => l.buildType === life.buildType || cost(l) < cost(life))
    .sort(
      (a, b) =>
        Number(b.buildType === life.buildType) - Number(a.buildType === life.buildType) ||
        cost(b) - cost(a),
    );
}

function fillPromisedYears(of: Repair): void {
  const { basis, state, year } = of;
  for (let at = year; at < Math.min(year + FILLED_YEARS, basis.wantedIn.length); at++) {
    const have = [...state.lives].filter((l) => l.yearIndex === at).length;
    for (let lacking = (basis.wantedIn[at] ?? 0) - have; lacking > 0; lacking--) {
      if (!placeNew(of, at) && !pullForward(of, at)) break;
    }
  }
}

/** A site without a place in this year: those of the first plan before others, which are worth most first. */
function placeNew(of: Repair, at: number): boolean {
  const { basis, state, dropped } = of;
  const taken = new Set([...state.lives].map((l) => l.site));
  const lost = dropped.filter((l) => !taken.has(l.site));
  for (const l of lost) taken.add(l.site);
  const { candidates } = state.tables.ground.campus;
  const others = candidates
    .filter(({ id }) => !taken.has(id))
    .flatMap(({ id }) => basis.plainLives(id, at))
    .sort((a, b) => b.benefit - a.benefit);
  return [...lost.flatMap((l) => alike(basis, l, at)), ...others]
    .slice(0, MOST_TRIES)
    .some((l) => place(of, l));
}

/** A site of a later year, the nearest first; the year that loses it is filled in its turn. */
function pullForward(of: Repair, at: number): boolean {
  const { basis, state } = of;
  const begins = new Set(of.open.map((l) => l.site));
  const later = [...state.lives]
    .filter((l) => l.yearIndex > at && begins.has(l.site))
    .sort((a, b) => a.yearIndex - b.yearIndex)
    .slice(0, MOST_TRIES);
  return later.some((from) => {
    const to = basis.plainLives(from.site, at).find((l) => l.buildType === from.buildType);
    if (!to || !of.mayBegin(to)) return false;
    applyLife(state, from, -1);
    if (place(of, to)) return true;
    applyLife(state, from, 1);
    return false;
  });
}
