import type { ReactNode } from 'react';
import type { FuturesResult } from '#futures/results/answer.js';
import { dollars } from '../../../format/numbers.js';
import { shareWithError } from '../../../format/sampled.js';
import { DataTable, type Column } from '../../../parts/data-table.js';
import { strings } from '../../../strings.data.js';

const words = strings.futures;

const columns: readonly Column[] = [
  { head: words.gift, kind: 'name' },
  { head: words.giftDollars, kind: 'number' },
  { head: words.comes, kind: 'text' },
  { head: words.lost, kind: 'text' },
  { head: words.lostInPlan, kind: 'number' },
];

/** Gifts and grants that the plan counts on: whether they come, and whether any of it lapses. */
export function GiftsInFutures({ result }: { readonly result: FuturesResult }): ReactNode {
  return (
    <>
      <h3>{words.gifts}</h3>
      <DataTable
        caption={words.giftsCaption}
        columns={columns}
        rows={result.gifts.map((gift) => ({
          key: gift.id,
          cells: [
            gift.name,
            dollars(gift.dollars),
            shareWithError(gift.comes),
            shareWithError(gift.lost),
            dollars(gift.lostInPlanDollars),
          ],
        }))}
      />
    </>
  );
}
