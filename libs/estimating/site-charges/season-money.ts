import { seasonMonths, type Calendar, type SeasonInstance } from '#domain/calendar.js';
import type { Cents } from '#units/cents.js';
import { splitWhole } from '#units/split.js';

/** Dollars that a season spends in one fiscal year. */
export interface SeasonDollars {
  readonly yearIndex: number;
  readonly amount: Cents;
}

/** Splits a season's dollars over the fiscal years of its months, evenly by month, to the cent. */
export function seasonDollars(
  calendar: Calendar,
  instance: SeasonInstance,
  amount: Cents,
): SeasonDollars[] {
  const months = seasonMonths(calendar, instance);
  const shares = splitWhole(
    amount,
    months.map(() => 1),
  );
  const byYear = new Map<number, number>();
  months.forEach(({ moneyYearIndex }, i) => {
    byYear.set(moneyYearIndex, (byYear.get(moneyYearIndex) ?? 0) + (shares[i] ?? 0));
  });
  return [...byYear].map(([yearIndex, sum]) => ({ yearIndex, amount: sum as Cents }));
}
