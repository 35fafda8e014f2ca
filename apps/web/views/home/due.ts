import type { HireRow } from '#explain/overview/plan-overview.js';
import { monthWork } from './month-work.data.js';

export interface Due {
  /** Requests whose month this is or was. */
  readonly hires: readonly HireRow[];
  /** The next request after this month; null: none. */
  readonly nextHire: HireRow | null;
  readonly usual: readonly string[];
}

/** What a month asks for, from the plan's hires and from the usual year. */
export function dueIn(today: Date, hires: readonly HireRow[]): Due {
  const now = monthNumber(today);
  const dated = hires
    .map((hire) => ({ hire, month: monthNumber(new Date(`1 ${hire.askBy}`)) }))
    .sort((a, b) => a.month - b.month);
  return {
    hires: dated.filter(({ month }) => month <= now).map(({ hire }) => hire),
    nextHire: dated.find(({ month }) => month > now)?.hire ?? null,
    usual: monthWork[today.getMonth() + 1] ?? [],
  };
}

/** Months since year 0, so that months of different years can be compared. */
function monthNumber(date: Date): number {
  return date.getFullYear() * 12 + date.getMonth();
}
