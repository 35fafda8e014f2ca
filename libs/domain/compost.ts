import type { Cents } from '#units/cents.js';
import type { CentiYards } from '#units/centiyards.js';

/** Compost that the campus makes, keeps and may buy. */
export interface CompostSupply {
  /** Matured production by season id. A season left out makes none. */
  readonly made: Readonly<Record<string, CentiYards>>;
  readonly openingStock: CentiYards;
  /** Most that the yard holds at the end of a season. */
  readonly yard: CentiYards;
  /** Price of one delivered cubic yard in the price year. */
  readonly pricePerYard: Cents;
  /** Most whole cubic yards that may be bought in one season. */
  readonly mostBoughtPerSeason: number;
  /** Season in which established ground is top-dressed. */
  readonly topDressSeason: string;
  /** First age of a site at which it is top-dressed, 1 or more. */
  readonly topDressFromAge: number;
}
