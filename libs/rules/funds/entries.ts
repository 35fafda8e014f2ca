import type { Breach } from '#domain/breach.js';
import type { Campus } from '#domain/campus.js';
import type { Inflow } from '#domain/money.js';
import type { Plan, SpendEntry } from '#domain/plan.js';

export function breach(record: string, message: string): Breach {
  return { rule: 'funds', record, message };
}

export const dollars = (amount: number) => `$${(amount / 100).toFixed(2)}`;

export function total(entries: readonly { amount: number }[]): number {
  return entries.reduce((sum, e) => sum + e.amount, 0);
}

/** What the site of an entry is, or was built as: a restriction by type goes by that for good. */
export function typeOf(campus: Campus, plan: Plan, { site }: SpendEntry): string | undefined {
  const placed = plan.decisions.placements.find((p) => p.site === site);
  return placed?.buildType ?? campus.existing.find((s) => s.id === site)?.buildType;
}

/** Whether the restriction of an inflow lets it pay an entry on a site of a type. */
export function allows(
  { restriction }: Inflow,
  type: string | undefined,
  entry: SpendEntry,
): boolean {
  if (!restriction.lines.includes(entry.line)) return false;
  const free = restriction.sites === 'any' && restriction.buildTypes === 'any';
  if (entry.site === undefined) return free && entry.line !== 'build';
  const siteOk = restriction.sites === 'any' || restriction.sites.includes(entry.site);
  const typeOk =
    restriction.buildTypes === 'any' ||
    (type !== undefined && restriction.buildTypes.includes(type));
  return siteOk && typeOk && (entry.line === 'build' || entry.line === 'care');
}
