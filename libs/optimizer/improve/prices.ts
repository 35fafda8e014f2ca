import type { Lifecycle } from '#rules/columns.js';

/** Prices of a relaxation: what taking up a life costs it, and what is little, in points. */
export interface Prices {
  readonly costOf: (life: Lifecycle) => number;
  readonly little: number;
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
