import { mayPay, type Payable, type Purse } from '#estimating/purses/purses.js';

/** Names the set of purses that may pay a cost; costs with one key share one row a year. */
export type SinkKey = string;

/**
 * Sorts costs by who may pay them. Matching money is capped site by site, so a site that it may pay
 * for has a sink of its own.
 */
export function sinkKeyer(purses: readonly Purse[]): (cost: Payable) => SinkKey {
  const kept = new Map<string, SinkKey>();
  return (cost) => {
    const name = `${cost.line}\u0000${cost.site ?? ''}\u0000${cost.buildType ?? ''}`;
    const found = kept.get(name);
    if (found !== undefined) return found;
    const payers = purses.flatMap((p, i) => (mayPay(p.restriction, cost) ? [i] : []));
    const matched = payers.some((i) => purses[i]?.fund.matchRatio !== undefined);
    const key = `${payers.join(',')}${matched ? ` ${cost.site}` : ''}`;
    kept.set(name, key);
    return key;
  };
}

/** Indexes of the purses behind a key. */
export function payersOf(key: SinkKey): number[] {
  const list = key.split(' ')[0] ?? '';
  return list === '' ? [] : list.split(',').map(Number);
}
