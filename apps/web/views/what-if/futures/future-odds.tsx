import type { ReactNode } from 'react';
import type { FuturesAnswer } from '#futures/results/answer.js';
import { withUnit } from '../../../format/numbers.js';
import { DataTable, type Column } from '../../../parts/data-table.js';
import { strings } from '../../../strings.data.js';

const words = strings.futures;

const columns: readonly Column[] = [
  { head: words.oddsKey, kind: 'name' },
  { head: words.oddsValue, kind: 'text' },
  { head: words.oddsSource, kind: 'words' },
];

/** A share is told as a percentage of whatever it is a share of. */
function valueInWords(value: number, unit: string): string {
  if (!unit.startsWith('share')) return withUnit(value, unit);
  const rest = unit.slice('share'.length).replace('/yr', words.eachYear);
  return `${withUnit(100 * value, '')}%${rest}`;
}

/** The numbers with which the futures were drawn, each with where it comes from. */
export function FutureOdds({ answer }: { readonly answer: FuturesAnswer }): ReactNode {
  return (
    <details>
      <summary>{words.odds}</summary>
      <DataTable
        caption={words.oddsCaption(answer.seed)}
        columns={columns}
        rows={answer.odds.map(({ key, value, unit, source }) => ({
          key,
          cells: [key, valueInWords(value, unit), source],
        }))}
      />
    </details>
  );
}
