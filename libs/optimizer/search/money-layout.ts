import { matchShare } from '#estimating/cost/matching.js';
import { payersOf } from '#rules/funds/sinks.js';
import type { Tables } from './tables.js';

/**
 * Who may pay what, laid out once for campuses that differ in amounts and costs only. Flat lists: the arcs of one
 * purse, or of one due, lie side by side.
 */
export interface MoneyLayout {
  readonly purse: Int32Array;
  readonly due: Int32Array;
  /** Share of a due that the fund of this purse may pay at most: below 1 for matching money. */
  readonly share: Float64Array;
  /** Number of the matching fund and due together, which share one limit; -1 for other money. */
  readonly match: Int32Array;
  readonly dueStarts: Int32Array;
  readonly purseStarts: Int32Array;
  /** Arc numbers in the order of `purseStarts`. */
  readonly byPurse: Int32Array;
}

export function moneyLayout({ years, purses, sinkKeys }: Tables): MoneyLayout {
  const matches = new Map<string, number>();
  const matchOf = (fund: string, due: number): number => {
    const key = `${fund} ${due}`;
    const found = matches.get(key) ?? matches.size;
    matches.set(key, found);
    return found;
  };
  const arcs = sinkKeys.flatMap((key, k) => {
    const payers = payersOf(key).sort((a, b) => (purses[a]?.last ?? 0) - (purses[b]?.last ?? 0));
    return Array.from({ length: years }, (_, year) =>
      payers.flatMap((purse) => {
        const { first = 0, last = -1, fund } = purses[purse] ?? {};
        if (year < first || year > last) return [];
        const due = k * years + year;
        if (fund?.matchRatio === undefined) return [{ purse, due, share: 1, match: -1 }];
        return [{ purse, due, share: matchShare(fund), match: matchOf(fund.id, due) }];
      }),
    ).flat();
  });
  const byPurse = Int32Array.from(arcs.keys()).sort(
    (a, b) => (arcs[a]?.purse ?? 0) - (arcs[b]?.purse ?? 0) || a - b,
  );
  return {
    purse: Int32Array.from(arcs, (a) => a.purse),
    due: Int32Array.from(arcs, (a) => a.due),
    share: Float64Array.from(arcs, (a) => a.share),
    match: Int32Array.from(arcs, (a) => a.match),
    dueStarts: startsOf(
      arcs.map((a) => a.due),
      sinkKeys.length * years,
    ),
    purseStarts: startsOf(
      Array.from(byPurse, (a) => arcs[a]?.purse ?? 0),
      purses.length,
    ),
    byPurse,
  };
}

/** Where each group begins in a list sorted by group; one more entry for the end. */
function startsOf(groups: readonly number[], count: number): Int32Array {
  const starts = new Int32Array(count + 1);
  for (const g of groups) starts[g + 1] = (starts[g + 1] ?? 0) + 1;
  for (let g = 0; g < count; g++) starts[g + 1] = (starts[g + 1] ?? 0) + (starts[g] ?? 0);
  return starts;
}
