import type { Finding } from '../finding.js';

/** Part of a year's hours in each season, by season id. Adds up to 1. */
export type SeasonShares = Readonly<Record<string, number>>;

/** Hours of each season. Conserves the total where the shares add up to 1. */
export function hoursBySeason(yearHours: number, shares: SeasonShares): Record<string, number> {
  const hours: Record<string, number> = {};
  for (const [season, share] of Object.entries(shares)) hours[season] = yearHours * share;
  return hours;
}

/** Rejects shares that are negative or do not total 1 (to one in a million). */
export function seasonShareFindings(field: string, shares: SeasonShares): Finding[] {
  const values = Object.values(shares);
  const total = values.reduce((a, b) => a + b, 0);
  if (values.every((share) => share >= 0) && Math.abs(total - 1) <= 1e-6) return [];
  return [
    {
      field,
      value: total,
      severity: 'reject',
      problem: `season shares total ${total.toFixed(4)}, or one is negative`,
      remedy: 'Make the shares of all seasons add up to 1.',
    },
  ];
}
