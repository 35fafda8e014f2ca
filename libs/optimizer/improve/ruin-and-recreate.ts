import type { Plan } from '#domain/plan.js';
import type { Lifecycle } from '#rules/columns.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';
import { checkPrecedence } from '#rules/precedence/check.js';
import { randomBelow, shuffled, type Random } from '#units/random.js';
import { admissible } from '../construct/admissible.js';
import { mustHave, promisedIn } from '../construct/construct.js';
import { isServed, tryLife } from '../construct/try-life.js';
import { clearHires } from '../search/clear-hires.js';
import { applyLife, decisionsOf, type SearchState } from '../search/state.js';
import { aspirationPoints } from '../tiers/plan-benefit.js';
import { rankings, type Prices, type Ranking } from './ranking.js';
import { tiersOf } from '../tiers/tier-list.js';

/** Fewest and most sites taken out at once. */
const LEAST_RUINED = 2;
const MOST_RUINED = 7;

/** Share of benefit below the best at which a plan is still worked on further. */
const TOLERATED_LOSS = 0.01;

export interface RuinSettings {
  readonly random: Random;
  /** Tried changes at the most. */
  readonly rounds: number;
  readonly done: () => boolean;
  /** Called with the state at each better plan. */
  readonly onBetter: (state: SearchState) => void;
  /** Of a relaxation of benefit. Left out: not known. */
  readonly prices?: Prices;
}

/**
 * Improves a plan by taking a few sites out and building it up again, keeping what is no worse. Every
 * plan on the way serves all care and pays every cost, in the exact arithmetic of the accounts.
 */
export function ruinAndRecreate(state: SearchState, settings: RuinSettings): void {
  const nextRanking = rankings(settings.random, settings.prices);
  let current = valuesOf(state);
  let best = current;
  for (let round = 0; round < settings.rounds && !settings.done(); round++) {
    const before = new Set(state.lives);
    ruin(state, settings.random);
    recreate(state, settings.random, nextRanking());
    const values = isServed(state) && keepsBinding(state) ? valuesOf(state) : undefined;
    if (!values || !acceptable(values, { current, best })) {
      restore(state, before);
      continue;
    }
    current = values;
    if (lexicographic(values, best) >= 0) continue;
    best = values;
    settings.onBetter(state);
  }
}

function keepsBinding(state: SearchState): boolean {
  const { campus } = state.tables.ground;
  const plan = planSketch(state);
  return (
    checkPrecedence(campus, plan).length === 0 &&
    campus.commitments.every(
      (c) => c.strength !== 'binding' || commitmentShortfall(campus, plan, c).amount === 0,
    ) &&
    mustHave(state.tables, 'binding').every((group) => group.some((l) => state.lives.has(l)))
  );
}

/** A plan with its decisions only: enough for promises, since a search serves all care. */
function planSketch(state: SearchState): Plan {
  return { decisions: decisionsOf(state), labor: [], unserved: [], spending: [], compost: [] };
}

/** Values to be made small, in the order of the tiers: shortfalls, then benefit with its sign turned. */
function valuesOf(state: SearchState): number[] {
  const { campus } = state.tables.ground;
  const plan = planSketch(state);
  const promises = tiersOf(campus).flatMap((t) =>
    t.commitment ? [commitmentShortfall(campus, plan, t.commitment).amount] : [],
  );
  let benefit = aspirationPoints(campus, plan);
  for (const life of state.lives) benefit += life.benefit;
  return [...promises, -benefit / 1000];
}

function lexicographic(a: readonly number[], b: readonly number[]): number {
  for (const [i, value] of a.entries()) {
    const difference = value - (b[i] ?? 0);
    if (Math.abs(difference) > 1e-9) return difference;
  }
  return 0;
}

/** No worse than the plan at hand, or no worse in promises than the best and nearly as good in benefit. */
function acceptable(
  values: readonly number[],
  { current, best }: { current: readonly number[]; best: readonly number[] },
): boolean {
  if (lexicographic(values, current) <= 0) return true;
  if (lexicographic(values.slice(0, -1), best.slice(0, -1)) > 0) return false;
  const [loss = 0, least = 0] = [values.at(-1), best.at(-1)];
  return loss - least <= TOLERATED_LOSS * Math.abs(least);
}

function ruin(state: SearchState, random: Random): void {
  const lives = [...state.lives];
  const count = LEAST_RUINED + randomBelow(random, MOST_RUINED - LEAST_RUINED + 1);
  const center = lives[randomBelow(random, Math.max(1, lives.length))]?.yearIndex ?? 0;
  const near = random() < 0.5;
  const pool = near
    ? [...lives]
        .sort((a, b) => Math.abs(a.yearIndex - center) - Math.abs(b.yearIndex - center))
        .slice(0, count + 2)
    : lives;
  for (const life of shuffled(random, pool).slice(0, count)) applyLife(state, life, -1);
  clearHires(state);
}

/** Promised years first, in order of time, then any site in any year. */
function recreate(state: SearchState, random: Random, ranking: Ranking): void {
  const { lifecycles } = state.tables.ground;
  const built = new Set([...state.lives].map((l) => l.site));
  const open = lifecycles.filter((l) => !built.has(l.site));
  for (const group of mustHave(state.tables, random() < 0.5 ? 'binding' : 'intended')) {
    if (!group.some((l) => state.lives.has(l))) placeOne(state, ranking(group));
  }
  fillPromisedYears(state, open, ranking);
  const left = new Set(open.map((l) => l.site));
  for (const l of state.lives) left.delete(l.site);
  for (const site of shuffled(random, [...left])) {
    const lives = ranking(open.filter((l) => l.site === site));
    placeOne(state, lives.slice(0, MOST_TRIES));
  }
}

const MOST_TRIES = 12;

function fillPromisedYears(state: SearchState, open: readonly Lifecycle[], ranking: Ranking): void {
  const { campus } = state.tables.ground;
  for (let year = 0; year < campus.calendar.horizonYears; year++) {
    const wanted = promisedIn(campus, year);
    if (wanted === 0) continue;
    const lives = ranking(open.filter((l) => l.yearIndex === year));
    let have = [...state.lives].filter((l) => l.yearIndex === year).length;
    while (have < wanted && placeOne(state, lives)) have += 1;
  }
}

function placeOne(state: SearchState, lives: readonly Lifecycle[]): boolean {
  const { campus } = state.tables.ground;
  return lives.some((life) => admissible(campus, state.lives, life) && tryLife(state, life));
}

function restore(state: SearchState, before: ReadonlySet<Lifecycle>): void {
  for (const life of [...state.lives]) if (!before.has(life)) applyLife(state, life, -1);
  for (const life of before) if (!state.lives.has(life)) applyLife(state, life, 1);
  clearHires(state);
  if (!isServed(state)) throw new Error('a plan that was served is not when it is put back');
}
