import type { ReactNode } from 'react';
import type { TierResult } from '#domain/tier.js';
import type { PromiseRow } from '#explain/overview/plan-overview.js';
import { amount, gapPercent } from '../format/numbers.js';
import { tierInWords } from '../format/tier-words.js';
import { DataTable, type Column, type TableRow } from '../parts/data-table.js';
import { strings } from '../strings.data.js';

const words = strings.tiers;

const columns: readonly Column[] = [
  { head: words.aim, kind: 'name' },
  { head: words.value, kind: 'number' },
  { head: words.bound, kind: 'number' },
  { head: words.gap, kind: 'number' },
  { head: words.proven, kind: 'text' },
];

interface TierTableProps {
  readonly tiers: readonly TierResult[];
  /** Where the names of promises stand. */
  readonly promises: readonly Pick<PromiseRow, 'id' | 'name'>[];
}

/** Each aim of the solve with its bound and gap, for a reader who wants to see the proof. */
export function TierTable({ tiers, promises }: TierTableProps): ReactNode {
  if (tiers.length === 0) return null;
  return (
    <details>
      <summary>{words.summary}</summary>
      <DataTable
        caption={words.caption}
        columns={columns}
        rows={tiers.map((tier) => row(tier, promises))}
      />
    </details>
  );
}

function row(tier: TierResult, promises: TierTableProps['promises']): TableRow {
  const withUnit = (value: number): string => `${amount(value)} ${tier.unit}`;
  return {
    key: tier.name,
    cells: [
      tierInWords(tier.name, promises),
      withUnit(tier.value),
      tier.bound === null ? words.noBound : withUnit(tier.bound),
      tier.gap === null ? words.noBound : gapPercent(tier.gap),
      tier.proven ? words.isProven : words.notProven,
    ],
  };
}
