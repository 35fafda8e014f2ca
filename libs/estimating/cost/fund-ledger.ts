import { type Cents, cents } from '#units/cents.js';

/** One year of a fund before it is worked out. */
export interface FundYear {
  readonly received: Cents;
  readonly wanted: Cents;
}

/** One year of a fund: opening + received = spent + lapsed + closing. */
export interface LedgerYear {
  readonly opening: Cents;
  readonly received: Cents;
  readonly spent: Cents;
  /** What was wanted and not there. */
  readonly short: Cents;
  readonly lapsed: Cents;
  readonly closing: Cents;
}

/**
 * Runs a fund year by year, oldest dollars first. Dollars received in year i may be spent in years
 * i to i + `carryYears`; 0 lapses at once, Infinity never. What is not there is short, never borrowed.
 */
export function fundLedger(years: readonly FundYear[], carryYears: number): LedgerYear[] {
  let vintages: { year: number; left: number }[] = [];
  return years.map(({ received, wanted }, year) => {
    const opening = total(vintages);
    vintages.push({ year, left: received });
    let unpaid: number = wanted;
    for (const vintage of vintages) {
      const paid = Math.min(vintage.left, unpaid);
      vintage.left -= paid;
      unpaid -= paid;
    }
    const before = total(vintages);
    vintages = vintages.filter((v) => v.left > 0 && year < v.year + carryYears);
    const closing = total(vintages);
    return {
      opening: cents(opening),
      received,
      spent: cents(wanted - unpaid),
      short: cents(unpaid),
      lapsed: cents(before - closing),
      closing: cents(closing),
    };
  });
}

function total(vintages: readonly { readonly left: number }[]): number {
  return vintages.reduce((sum, { left }) => sum + left, 0);
}
