import { mayFront, type Fronting } from '#estimating/purses/frontings.js';
import { mayPay, type Payable, type Purse } from '#estimating/purses/purses.js';

/** Names the set of purses that may pay a cost; costs with one key share one row a year. */
export type SinkKey = string;

/** The money that costs are sorted by. */
export interface Payers {
  readonly purses: readonly Purse[];
  readonly frontings: readonly Fronting[];
}

/**
 * Sorts costs by who may pay them. Matching and reimbursable money is capped site by site, so a site
 * that it may pay for has a sink of its own.
 */
export function sinkKeyer({ purses, frontings }: Payers): (cost: Payable) => SinkKey {
  const kept = new Map<string, SinkKey>();
  return (cost) => {
    const name = `${cost.line}\u0000${cost.site ?? ''}\u0000${cost.buildType ?? ''}`;
    const found = kept.get(name);
    if (found !== undefined) return found;
    const payers = purses.flatMap((p, i) => (mayPay(p.restriction, cost) ? [i] : []));
    const fronted = frontings.flatMap((f, i) => (mayFront(f, purses, cost) ? [i] : []));
    const matched = payers.some((i) => purses[i]?.fund.matchRatio !== undefined);
    const own = matched || fronted.length > 0 ? ` ${cost.site}` : '';
    const key = `${payers.join(',')}${own}${fronted.length > 0 ? ` ${fronted.join(',')}` : ''}`;
    kept.set(name, key);
    return key;
  };
}

/** Indexes of the purses behind a key. */
export function payersOf(key: SinkKey): number[] {
  return numbersIn(key.split(' ')[0]);
}

/** Indexes of the ways to front the costs behind a key. */
export function frontingsIn(key: SinkKey): number[] {
  return numbersIn(key.split(' ')[2]);
}

function numbersIn(list = ''): number[] {
  return list === '' ? [] : list.split(',').map(Number);
}
