import type { Cents } from '#units/cents.js';
import { centiYards, type CentiYards } from '#units/centiyards.js';

/**
 * `certified`: from batches that were tested or have a heat log; it may go anywhere. `other`: all
 * else; it never goes on ground of an edible build type.
 */
export const COMPOST_GRADES = ['certified', 'other'] as const;
export type CompostGrade = (typeof COMPOST_GRADES)[number];

/** Compost of one grade that the campus makes, opens with and may buy. */
export interface GradeSupply {
  /** Matured production by season id. A season left out makes none. */
  readonly made: Readonly<Record<string, CentiYards>>;
  readonly openingStock: CentiYards;
  /** Price of one delivered cubic yard in the price year. */
  readonly pricePerYard: Cents;
  /** Most whole cubic yards that may be bought in one season. */
  readonly mostBoughtPerSeason: number;
}

/** Compost that the campus makes, keeps and may buy; what stands here itself is of the certified grade. */
export interface CompostSupply extends GradeSupply {
  /** Most that the yard holds at the end of a season, both grades together. */
  readonly yard: CentiYards;
  /** Season in which established ground is top-dressed. */
  readonly topDressSeason: string;
  /** First age of a site at which it is top-dressed, 1 or more. */
  readonly topDressFromAge: number;
  /** Compost of the other grade. Left out: there is none. */
  readonly other?: GradeSupply;
}

const NO_SUPPLY: GradeSupply = {
  made: {},
  openingStock: centiYards(0),
  pricePerYard: 0 as Cents,
  mostBoughtPerSeason: 0,
};

/** What there is of a grade; nothing of the other grade where the campus has none. */
export function gradeSupply(supply: CompostSupply, grade: CompostGrade): GradeSupply {
  return grade === 'certified' ? supply : (supply.other ?? NO_SUPPLY);
}
