import type { Random } from '#units/random.js';
import { Checkpoint } from '../search/checkpoint.js';
import type { SearchState } from '../search/state.js';
import { candidatesOf } from './candidates.js';
import { PEOPLE_WAYS } from './change-people.js';
import type { Prices } from './prices.js';
import { nextRanking } from './ranking.js';
import { lackingByYear, recreate, total } from './recreate.js';
import { ruin } from './ruin.js';
import { judged, leastBenefitValue, lexicographic, searchValues } from './values.js';
import { Ways } from './ways.js';

/**
 * How far below the best a plan is still worked on further, in shares of what one of its sites is worth on
 * average: it falls from the first to the last over a number of rounds, and then begins anew (threshold
 * accepting, Dueck and Scheuer 1990).
 */
export interface Losses {
  readonly first: number;
  readonly last: number;
}

const SETTLING: Losses = { first: 0.1, last: 0.004 };

/** Comes by more lives than it settles for. */
export const WANDERING: Losses = { first: 0.5, last: 0.05 };

export const COOLING_ROUNDS = 2000;

/** Rounds without a better plan after which a search has nothing more to find. */
const ENOUGH_ROUNDS = 2 * COOLING_ROUNDS;

export interface RuinSettings {
  readonly random: Random;
  /** Tried changes at the most; it ends sooner where nothing is gained for long. */
  readonly rounds: number;
  readonly done: () => boolean;
  /** Called with the state at each better plan. */
  readonly onBetter: (state: SearchState) => void;
  /** Called with the state at each plan that is worked on further, better or not. */
  readonly onTaken?: (state: SearchState) => void;
  /** Left out: those with which a search settles. */
  readonly losses?: Losses;
  /** Values that a plan must beat to be told, where the state at hand is not the best known. */
  readonly beat?: readonly number[];
  /** Of a relaxation of benefit. Left out: not known. */
  readonly prices?: Prices;
}

/**
 * Improves a plan by taking a few sites out and building it up again, keeping what is no worse. Every
 * plan on the way serves all care and pays every cost, in the exact arithmetic of the accounts.
 */
export function ruinAndRecreate(state: SearchState, settings: RuinSettings): void {
  const { random, prices, losses = SETTLING } = settings;
  const candidates = candidatesOf(state.tables, prices);
  let current = searchValues(state);
  let best = current;
  let lastGain = 0;
  const ways = new Ways(PEOPLE_WAYS, random);
  const before = new Checkpoint(state);
  for (let round = 0; round < settings.rounds && !settings.done(); round++) {
    if (round - lastGain >= ENOUGH_ROUNDS) return;
    before.mark();
    const mayLack = total(lackingByYear(state, candidates));
    const people = ways.next();
    const bar = { current, best, loss: lossIn(round, losses) / Math.max(1, state.lives.size) };
    const isBuilt =
      // Nothing that is added to it will make it served.
      ruin(state, { random, people, candidates, prices, removed: before.removed }) &&
      recreate(state, {
        ...{ candidates, random, mayLack, added: before.added },
        ranking: nextRanking(candidates, random, prices),
      });
    const values = isBuilt && mayBeAcceptable(state, bar) ? judged(state) : undefined;
    if (!values || !acceptable(values, bar)) {
      before.putBack();
      continue;
    }
    if (lexicographic(values, current) < 0) ways.reward(people);
    current = values;
    settings.onTaken?.(state);
    if (lexicographic(values, best) >= 0) continue;
    best = values;
    lastGain = round;
    if (!settings.beat || lexicographic(values, settings.beat) < 0) settings.onBetter(state);
  }
}

interface Bar {
  readonly current: readonly number[];
  readonly best: readonly number[];
  /** Share of benefit below the best that is tolerated. */
  readonly loss: number;
}

/** No worse than the plan at hand, or no worse in promises than the best and nearly as good in benefit. */
function acceptable(values: readonly number[], { current, best, loss }: Bar): boolean {
  if (lexicographic(values, current) <= 0) return true;
  if (lexicographic(values.slice(0, -1), best.slice(0, -1)) > 0) return false;
  return (values.at(-1) ?? 0) <= tolerated(best, loss);
}

function tolerated(best: readonly number[], loss: number): number {
  const least = best.at(-1) ?? 0;
  return least + loss * Math.abs(least);
}

/** False only where a state is not acceptable, which its sites alone tell soonest. */
function mayBeAcceptable(state: SearchState, { current, best, loss }: Bar): boolean {
  if (current.slice(0, -1).some((shortfall) => shortfall > 0)) return true;
  const most = Math.max(current.at(-1) ?? 0, tolerated(best, loss));
  return leastBenefitValue(state) <= most + 1e-6;
}

function lossIn(round: number, { first, last }: Losses): number {
  return first * (last / first) ** ((round % COOLING_ROUNDS) / COOLING_ROUNDS);
}
