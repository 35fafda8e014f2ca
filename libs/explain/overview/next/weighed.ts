import type { Reason } from '../plan-overview.js';

/**
 * A reason with its weight. Promises and money that would be lost come before comparisons, and
 * within each the larger first: dollars by amount, comparisons by distance from the middle place.
 */
export interface Weighed {
  readonly side: 'for' | 'against';
  readonly rank: 'promise' | 'money' | 'rule' | 'comparison';
  /** Dollars for money; 0 (middle) to 1 (first or last) for comparisons. */
  readonly size: number;
  readonly reason: Reason;
}

const ORDER: readonly Weighed['rank'][] = ['promise', 'money', 'rule', 'comparison'];

export function sideOf(reasons: readonly Weighed[], side: Weighed['side']): Reason[] {
  return reasons
    .filter((weighed) => weighed.side === side)
    .map((weighed, index) => ({ ...weighed, index }))
    .sort(
      (a, b) =>
        ORDER.indexOf(a.rank) - ORDER.indexOf(b.rank) || b.size - a.size || a.index - b.index,
    )
    .map(({ reason }) => reason);
}
