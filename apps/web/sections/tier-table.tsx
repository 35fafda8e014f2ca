import type { ReactNode } from 'react';
import type { TierResult } from '#domain/tier.js';
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

/** Each aim of the solve with its bound and gap, for a reader who wants to see the proof. */
export function TierTable({ tiers }: { readonly tiers: readonly TierResult[] }): ReactNode {
  if (tiers.length === 0) return null;
  return (
    <details>
      <summary>{words.summary}</summary>
      <DataTable caption={words.caption} columns={columns} rows={tiers.map(row)} />
    </details>
  );
}

function row(tier: TierResult): TableRow {
  const withUnit = (value: number): string => `${amount(value)} ${tier.unit}`;
  return {
    key: tier.name,
    cells: [
      tierInWords(tier.name),
      withUnit(tier.value),
      tier.bound === null ? words.noBound : withUnit(tier.bound),
      tier.gap === null ? words.noBound : gapPercent(tier.gap),
      tier.proven ? words.isProven : words.notProven,
    ],
  };
}
