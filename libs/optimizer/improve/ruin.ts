import type { Lifecycle } from '#rules/columns.js';
import { randomBelow, shuffled, type Random } from '#units/random.js';
import { isServed } from '../construct/try-life.js';
import { applyLife, type SearchState } from '../search/state.js';
import { changePeople, type PeopleWay } from './change-people.js';
import type { Prices } from './ranking.js';

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
  readonly prices: Prices | undefined;
}

/**
 * Takes a few sites out, and people with them; true where what is left is served and paid for. Sites are
 * chosen by what their lives cost, by nearness in time, or by chance alone.
 */
export function ruin(state: SearchState, { random, people, prices }: RuinOf): boolean {
  const count = LEAST_RUINED + randomBelow(random, MOST_RUINED - LEAST_RUINED + 1);
  for (const life of chosen(state, { count, random, prices })) applyLife(state, life, -1);
  changePeople(state, random, people);
  return isServed(state);
}

interface Choice {
  readonly count: number;
  readonly random: Random;
  readonly prices: Prices | undefined;
}

function chosen(state: SearchState, { count, random, prices }: Choice): readonly Lifecycle[] {
  const lives = [...state.lives];
  if (prices && random() < BY_COST) {
    const { costOf, little } = prices;
    return smallest(lives, (l) => -(costOf(l) + ANY * little) * random()).slice(0, count);
  }
  if (random() < 0.5) return shuffled(random, lives).slice(0, count);
  const center = lives[randomBelow(random, Math.max(1, lives.length))]?.yearIndex ?? 0;
  const near = smallest(lives, (l) => Math.abs(l.yearIndex - center)).slice(0, count + 2);
  return shuffled(random, near).slice(0, count);
}

function smallest(
  lives: readonly Lifecycle[],
  by: (life: Lifecycle) => number,
): readonly Lifecycle[] {
  const keyed = lives.map((life) => ({ life, key: by(life) }));
  return keyed.sort((a, b) => a.key - b.key).map(({ life }) => life);
}
