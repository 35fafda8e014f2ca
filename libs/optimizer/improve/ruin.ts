import type { Lifecycle } from '#rules/columns.js';
import { Largest } from '#units/largest.js';
import { randomBelow, shuffled, type Random } from '#units/random.js';
import { isServed } from '../construct/try-life.js';
import { applyLife, type SearchState } from '../search/state.js';
import { changePeople, type PeopleWay } from './change-people.js';
import type { Candidates } from './candidates.js';
import type { Prices } from './prices.js';

/** Fewest and most sites taken out at once. */
const LEAST_RUINED = 2;
const MOST_RUINED = 5;

/** Share of rounds that take out what the prices speak against, where there are any. */
const BY_COST = 0.6;

/** Share of what is little that speaks against every site, so that any may be taken out. */
const ANY = 0.5;

export interface RuinOf {
  readonly random: Random;
  readonly people: PeopleWay;
  readonly candidates: Candidates;
  readonly prices: Prices | undefined;
  /** Takes each life that is taken out. */
  readonly removed: Lifecycle[];
}

/**
 * Takes a few sites out, and people with them; true where what is left is served and paid for. Sites are
 * chosen by what their lives cost, by nearness in time, or by chance alone.
 */
export function ruin(state: SearchState, of: RuinOf): boolean {
  const { random, people, removed } = of;
  const count = LEAST_RUINED + randomBelow(random, MOST_RUINED - LEAST_RUINED + 1);
  for (const life of chosen(state, of, count)) {
    applyLife(state, life, -1);
    removed.push(life);
  }
  changePeople(state, random, people);
  return isServed(state);
}

function chosen(state: SearchState, of: RuinOf, count: number): readonly Lifecycle[] {
  const { random, prices, candidates } = of;
  const lives = [...state.lives];
  if (prices && random() < BY_COST) {
    const costOf = (l: Lifecycle) => candidates.cost[candidates.numberOf.get(l) ?? -1] ?? 0;
    return largest(lives, count, (l) => (costOf(l) + ANY * prices.little) * random());
  }
  if (random() < 0.5) return largest(lives, count, random);
  const center = lives[randomBelow(random, Math.max(1, lives.length))]?.yearIndex ?? 0;
  const near = largest(lives, count + 2, (l) => -Math.abs(l.yearIndex - center));
  return shuffled(random, near).slice(0, count);
}

function largest(
  lives: readonly Lifecycle[],
  most: number,
  by: (life: Lifecycle) => number,
): readonly Lifecycle[] {
  const found = new Largest<Lifecycle>(most);
  for (const life of lives) found.offer(life, by(life));
  return found.items;
}
