import { escalationFactor } from './escalation.js';

/** Constant dollars of a base year as dollars of the year of spending, at general inflation. */
export function nominalOf(constant: number, inflation: number, years: number): number {
  return constant * escalationFactor(inflation, years);
}

/** Dollars of the year of spending as constant dollars of a base year. */
export function constantOf(nominal: number, inflation: number, years: number): number {
  return nominal / escalationFactor(inflation, years);
}

/** Real rate of a nominal one: (1 + i) / (1 + f) - 1. Source: I. Fisher; NIST Handbook 135, chapter 3. */
export function realRate(nominal: number, inflation: number): number {
  return (1 + nominal) / (1 + inflation) - 1;
}
