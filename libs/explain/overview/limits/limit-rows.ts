import type { Ground } from '../ground.js';
import type { FundYear } from '../ledgers/fund-years.js';
import type { LimitRow, SeasonRow, YearRow } from '../plan-overview.js';
import { compostLimit } from './compost-limit.js';
import { laborLimits } from './labor-limits.js';
import { moneyLimit } from './money-limit.js';
import { sitesLimit } from './sites-limit.js';

/**
 * Each resource's first limit in this plan, the earliest first and those that never run short last.
 * Limits of the same year stay in the order of people, money, compost and sites.
 */
export function limitRows(
  ground: Ground,
  rows: {
    readonly seasons: readonly SeasonRow[];
    readonly years: readonly YearRow[];
    readonly ledger: readonly FundYear[];
  },
): LimitRow[] {
  const limits = [
    ...laborLimits(rows.seasons),
    moneyLimit(ground, rows.ledger),
    compostLimit(ground),
    sitesLimit(rows.years),
  ];
  const order = [...new Set(rows.seasons.map(({ year }) => year))];
  const place = ({ year }: LimitRow) => (year === null ? Infinity : order.indexOf(year));
  return limits.sort((a, b) => compare(place(a), place(b)));
}

function compare(a: number, b: number): number {
  return a === b ? 0 : a - b;
}
