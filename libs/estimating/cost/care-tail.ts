import { escalationFactor } from './escalation.js';

export interface CareTail {
  /** Hours of care at each age, from age 1. */
  readonly hoursAtAge: readonly number[];
  /** Loaded dollars of an hour in the price year. */
  readonly dollarsPerHour: number;
  /** Supplies and renewals of a year, in dollars of the price year. */
  readonly suppliesPerYear: number;
  /** Years from the price year to the first year of care. */
  readonly yearsUntilFirst: number;
  readonly growth: number;
}

export interface TailYear {
  readonly age: number;
  readonly constantDollars: number;
  readonly nominalDollars: number;
}

/** What a site goes on costing, year by year, in constant dollars of the price year and in dollars of each year. */
export function careTail(tail: CareTail): TailYear[] {
  return tail.hoursAtAge.map((hours, index) => {
    const constantDollars = hours * tail.dollarsPerHour + tail.suppliesPerYear;
    const growth = escalationFactor(tail.growth, tail.yearsUntilFirst + index);
    return { age: index + 1, constantDollars, nominalDollars: constantDollars * growth };
  });
}

/** Sums of the years, kept apart: a constant and a nominal total are never one number. */
export function tailTotals(years: readonly TailYear[]): Omit<TailYear, 'age'> {
  return {
    constantDollars: years.reduce((sum, year) => sum + year.constantDollars, 0),
    nominalDollars: years.reduce((sum, year) => sum + year.nominalDollars, 0),
  };
}
