import type { Check } from '../check.js';

/** A site is built at most once. */
export const checkBuiltOnce: Check = (_campus, plan) => {
  const years = new Map<string, number[]>();
  for (const { site, year } of plan.decisions.placements) {
    years.set(site, [...(years.get(site) ?? []), year]);
  }
  return [...years]
    .filter(([, built]) => built.length > 1)
    .map(([site, built]) => ({
      rule: 'built-once',
      record: site,
      message: `${site} is built ${built.length} times (${built.map((y) => `FY${y}`).join(', ')}); a site is built once`,
    }));
};
