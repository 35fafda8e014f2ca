import type { ReactNode } from 'react';
import { amount } from '../../../format/numbers.js';
import { DataTable, type Column } from '../../../parts/data-table.js';
import { strings } from '../../../strings.data.js';
import type { AnySite } from '../site-rows.js';

const words = strings.record;

const columns: readonly Column[] = [
  { head: words.fact, kind: 'head' },
  { head: words.value, kind: 'words' },
];

/** What is known of the ground; what is not is said to be unknown. */
export function FactsTable({ site }: { readonly site: AnySite }): ReactNode {
  const rows = Object.entries(words.factNames).map(([key, { name, unit }]) => ({
    key,
    cells: [name, valueInWords(site.facts[key as keyof AnySite['facts']], unit)],
  }));
  return <DataTable caption={words.factsCaption} columns={columns} rows={rows} />;
}

export function valueInWords(value: string | number | boolean, unit: string): string {
  if (value === 'unknown') return words.unknown;
  if (typeof value === 'boolean') return value ? words.yes : words.no;
  if (unit === 'share' && typeof value === 'number') return `${amount(value * 100)}%`;
  const text = typeof value === 'number' ? amount(value) : value;
  if (unit === '%') return `${text}%`;
  return unit === '' ? text : `${text} ${unit}`;
}
