import { Largest } from '#units/largest.js';
import type { Random } from '#units/random.js';
import type { Candidates } from './candidates.js';
import type { Prices } from './prices.js';

/** What a ranking chooses from. */
export interface Choice {
  /** Numbers of lives, in the order of what they cost. */
  readonly among: Int32Array;
  readonly most: number;
  /** Left out: all are. */
  readonly isOpen?: (life: number) => boolean;
}

/** Orders lives for one recreation, by number: those worth most first, a little by chance. */
export type Ranking = (choice: Choice) => readonly number[];

/** Share of recreations that go by prices where there are any. */
const BY_PRICES = 0.8;

/** A ranking for one recreation, each of another taste. */
export function nextRanking(candidates: Candidates, random: Random, prices?: Prices): Ranking {
  return prices && random() < BY_PRICES
    ? byPrices(candidates, random, prices.little)
    : byTaste(candidates, random);
}

function byPrices({ cost }: Candidates, random: Random, little: number): Ranking {
  const noise = little * (0.2 + 2 * random() ** 2);
  const mostCost = little * (1 + 20 * random() ** 2);
  return ({ among, most, isOpen }) => {
    const best = new Largest<number>(most);
    for (const life of among) {
      const own = cost[life] ?? 0;
      // All that follow cost more.
      if (own > mostCost || -own <= best.bar) break;
      if (!isOpen || isOpen(life)) best.offer(life, -own - noise * random());
    }
    return best.items;
  };
}

function byTaste({ benefit, care }: Candidates, random: Random): Ranking {
  const careCounts = 0.2 + random() * 1.3;
  const noise = 0.1 + random() * 0.5;
  return ({ among, most, isOpen }) => {
    const best = new Largest<number>(most);
    for (const life of among) {
      if (isOpen && !isOpen(life)) continue;
      const worth = (benefit[life] ?? 0) - careCounts * (care[life] ?? 0);
      best.offer(life, worth + noise * random());
    }
    return best.items;
  };
}
