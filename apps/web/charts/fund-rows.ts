import type { FundRow, PlanOverview } from '#explain/overview/plan-overview.js';
import { groupBy } from '../format/group-by.js';
import type { StackRow } from './stack/stack-drawing.js';

/** One year of a fund, or of several added up: opening + received + paidBack = spent + lapsed + closing. */
export interface LedgerRow extends StackRow, Omit<FundRow, 'fund' | 'name'> {}

export interface Ledger {
  readonly id: string;
  readonly name: string;
  readonly rows: readonly LedgerRow[];
}

/** Each fund's ledger, in the order of the overview. */
export function ledgersOf(funds: readonly FundRow[]): readonly Ledger[] {
  return [...groupBy(funds, ({ fund }) => fund)].map(([id, rows]) => ({
    id,
    name: rows[0]?.name ?? id,
    rows: rows.map((row) => addedUp([row])),
  }));
}

/** All funds added up, for each year in which any holds something. */
export function allFunds({ years, funds }: PlanOverview): readonly LedgerRow[] {
  const byYear = groupBy(funds, ({ year }) => year);
  return years.flatMap(({ year }) => {
    const rows = byYear.get(year);
    return rows === undefined ? [] : [addedUp(rows)];
  });
}

function addedUp(rows: readonly FundRow[]): LedgerRow {
  const sum = (of: (row: FundRow) => number): number =>
    rows.reduce((total, row) => total + of(row), 0);
  const year = rows[0]?.year ?? '';
  return {
    label: year,
    year,
    opening: sum((row) => row.opening),
    received: sum((row) => row.received),
    paidBack: sum((row) => row.paidBack),
    spent: sum((row) => row.spent),
    lapsed: sum((row) => row.lapsed),
    closing: sum((row) => row.closing),
    floor: sum((row) => row.floor),
  };
}
