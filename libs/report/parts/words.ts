import type { CostBand } from '#explain/overview/plan-overview.js';
import { dollarsInWords, wholeInWords } from '#units/in-words.js';

/** `class 5 range $50,000 to $107,000 in FY28 dollars`. */
export function bandInWords({ low, high, dollarsOf }: CostBand): string {
  return `class 5 range ${dollarsInWords(low)} to ${dollarsInWords(high)} in ${dollarsOf} dollars`;
}

/** Thousands of dollars for a table; what is there but rounds to nothing is not called nothing. */
export function thousands(dollars: number): string {
  if (dollars > 0 && dollars < 500) return '< 1';
  return wholeInWords(dollars / 1000);
}

export const ESTIMATE_CLASS =
  'Costs: AACE class 5, about -30% to +50%, for planning, not for contract award.';
