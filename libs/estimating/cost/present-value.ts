/**
 * Discount factors of life-cycle costing, payments at the end of the year; `d` is the yearly discount rate as a
 * share and `n` the number of years. Names and formulas: ASTM E917, NIST Handbook 135 chapter 3.
 */

/** Single present value: what $1 in n years is worth now. 1 / (1 + d)^n. */
export function spv(d: number, n: number): number {
  return 1 / (1 + d) ** n;
}

/** Uniform present value: what $1 at the end of each of n years is worth now. n where d is 0. */
export function upv(d: number, n: number): number {
  return d === 0 ? n : ((1 + d) ** n - 1) / (d * (1 + d) ** n);
}

/** Uniform capital recovery: the yearly payment that repays $1 over n years. 1 / UPV. */
export function ucr(d: number, n: number): number {
  return 1 / upv(d, n);
}

/** Uniform compound amount: what $1 a year has grown to after n years. */
export function uca(d: number, n: number): number {
  return d === 0 ? n : ((1 + d) ** n - 1) / d;
}

/** Uniform sinking fund: the yearly payment that grows to $1 in n years. 1 / UCA. */
export function usf(d: number, n: number): number {
  return 1 / uca(d, n);
}

export interface Growing {
  readonly discount: number;
  readonly growth: number;
  readonly years: number;
}

/**
 * Present value of payments that grow, per $1 of the first one, paid at the end of year 1.
 *
 *     (1 - ((1 + g) / (1 + d))^n) / (d - g);  n / (1 + d) where d = g
 */
export function growingAnnuity({ discount, growth, years }: Growing): number {
  const ratio = (1 + growth) / (1 + discount);
  if (Math.abs(discount - growth) < 1e-12) return years / (1 + discount);
  return (1 - ratio ** years) / (discount - growth);
}

/** Modified uniform present value, UPV*: the same per $1 at today's prices, so the first payment is 1 + g. */
export function upvStar(growing: Growing): number {
  return (1 + growing.growth) * growingAnnuity(growing);
}

/** Growing perpetuity per $1 of the first payment: 1 / (d - g). Throws unless the discount exceeds growth. */
export function growingPerpetuity(discount: number, growth: number): number {
  if (discount <= growth)
    throw new RangeError('a perpetuity that grows as fast as the discount has no value');
  return 1 / (discount - growth);
}

/** Present value of payments at the end of years 1, 2, 3 ... */
export function presentValue(d: number, payments: readonly number[]): number {
  return payments.reduce((sum, payment, index) => sum + payment * spv(d, index + 1), 0);
}
