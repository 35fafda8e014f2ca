/** What a season adds to and takes from the yard, cubic yards. */
export interface StockSeason {
  readonly matured: number;
  readonly wanted: number;
}

/** opening + matured + bought = used + givenAway + closing. */
export interface StockResult {
  readonly opening: number;
  readonly matured: number;
  readonly used: number;
  /** What had to be bought because stock and production fell short. */
  readonly bought: number;
  /** What the yard could not hold. */
  readonly givenAway: number;
  readonly closing: number;
}

export interface Yard {
  readonly openingCuYd: number;
  readonly yardCuYd: number;
}

/** Compost season by season: I' = I + matured + bought - used, 0 <= I' <= yard. Buys only what is short. */
export function stockBySeason(seasons: readonly StockSeason[], yard: Yard): StockResult[] {
  let opening = yard.openingCuYd;
  return seasons.map(({ matured, wanted }) => {
    const there = opening + matured;
    const bought = Math.max(0, wanted - there);
    const left = there + bought - wanted;
    const closing = Math.min(left, yard.yardCuYd);
    const result = { opening, matured, used: wanted, bought, givenAway: left - closing, closing };
    opening = closing;
    return result;
  });
}

/** Season index in which compost made in `season` is ripe, with seasons of `monthsPerSeason` months. */
export function ripeIn(season: number, maturityMonths: number, monthsPerSeason: number): number {
  return season + Math.ceil(maturityMonths / monthsPerSeason);
}

/** Dollars of a purchase in the price year. */
export function purchaseDollars(cubicYards: number, dollarsPerCuYd: number): number {
  return cubicYards * dollarsPerCuYd;
}
