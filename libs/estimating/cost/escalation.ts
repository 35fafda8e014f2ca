/** What a price grows by over whole or part years: (1 + g)^n. `rate` is a share (0.04 is 4 %). */
export function escalationFactor(rate: number, years: number): number {
  return (1 + rate) ** years;
}

/** Growth by rates that differ from year to year: the product of (1 + g). */
export function escalationAlong(rates: readonly number[]): number {
  return rates.reduce((factor, rate) => factor * (1 + rate), 1);
}

/** Price in the year of spending, from the price year: F = P (1 + g)^n. */
export function escalated(amount: number, rate: number, years: number): number {
  return amount * escalationFactor(rate, years);
}
