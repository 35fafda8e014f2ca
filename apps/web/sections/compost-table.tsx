import type { ReactNode } from 'react';
import type { CompostRow } from '#explain/overview/plan-overview.js';
import { wholeNumber } from '../format/numbers.js';
import { DataTable, type Column } from '../parts/data-table.js';
import { strings } from '../strings.data.js';

const words = strings.money;

const parts: readonly (readonly [keyof Omit<CompostRow, 'label' | 'year'>, string])[] = [
  ['made', words.made],
  ['bought', words.bought],
  ['builds', words.builds],
  ['topDress', words.topDress],
  ['givenAway', words.givenAway],
  ['stock', words.stock],
];

const columns: readonly Column[] = [
  { head: words.season, kind: 'head' },
  ...parts.map(([, head]) => ({ head, kind: 'number' }) as const),
];

/** Compost made, bought, used and kept, season by season. */
export function CompostTable({ rows }: { readonly rows: readonly CompostRow[] }): ReactNode {
  return (
    <details>
      <summary>{words.compostSummary}</summary>
      <DataTable
        caption={words.compostCaption}
        columns={columns}
        rows={rows.map((row) => ({
          key: row.label,
          cells: [row.label, ...parts.map(([part]) => wholeNumber(row[part]))],
        }))}
      />
    </details>
  );
}
