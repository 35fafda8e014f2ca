import type { Random } from '#units/random.js';
import type { Lifecycle } from '#rules/columns.js';
import { settledHours } from '../construct/construct.js';

/** Orders lives for one recreation: those worth most first, a little by chance. */
export type Ranking = (lives: readonly Lifecycle[]) => Lifecycle[];

/** Prices of a relaxation: what taking up a life costs it, and what is little, in points. */
export interface Prices {
  readonly costOf: (life: Lifecycle) => number;
  readonly little: number;
}

/** Share of recreations that go by prices where there are any. */
const BY_PRICES = 0.8;

/** Makes a new ranking for each recreation, of another taste each time. */
export function rankings(random: Random, prices?: Prices): () => Ranking {
  const worth = new Map<Lifecycle, { readonly benefit: number; readonly care: number }>();
  const worthOf = (life: Lifecycle) => {
    const known = worth.get(life);
    if (known) return known;
    const made = { benefit: Math.log(1 + life.benefit), care: Math.log(1 + settledHours(life)) };
    worth.set(life, made);
    return made;
  };
  const byPrices = ({ costOf, little }: Prices): Ranking => {
    const noise = little * (0.2 + 2 * random() ** 2);
    const most = little * (1 + 20 * random() ** 2);
    const ranking = sorted((life) => -costOf(life) - noise * random());
    return (lives) => ranking(lives.filter((life) => costOf(life) <= most));
  };
  const byTaste = (): Ranking => {
    const care = 0.2 + random() * 1.3;
    const noise = 0.1 + random() * 0.5;
    return sorted((life) => {
      const of = worthOf(life);
      return of.benefit - care * of.care + noise * random();
    });
  };
  return () => (prices && random() < BY_PRICES ? byPrices(prices) : byTaste());
}

function sorted(value: (life: Lifecycle) => number): Ranking {
  return (lives) =>
    lives
      .map((life) => ({ life, value: value(life) }))
      .sort((a, b) => b.value - a.value)
      .map(({ life }) => life);
}

/** Share of the bound of benefit that is little for one site. */
const LITTLE = 0.003;

/** Prices by the reduced costs of a relaxation of benefit. */
export function pricesOf(of: {
  readonly costOf: ReadonlyMap<Lifecycle, number>;
  readonly bound: number;
}): Prices {
  return { costOf: (life) => of.costOf.get(life) ?? 0, little: LITTLE * Math.abs(of.bound) };
}
