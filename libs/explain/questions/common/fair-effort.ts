import type { Effort } from '#optimizer/resolve/order.js';
import { counted } from '#units/in-words.js';
import type { Asked, Made } from './asked.js';
import { tryPace } from './pace.js';

/** Most rounds that a re-solve gets by the clock. */
const MOST_ROUNDS = 2000;

/** Fewer mend too little to compare; where time is that short, what comes last is left out and said. */
const LEAST_ROUNDS = 12;

/** Rounds of a re-solve where nobody waits. */
const UNTIMED_ROUNDS = 300;

/** Shortest time in which a re-solve is begun, in seconds. */
const LEAST_SECONDS = 0.05;

/**
 * The effort for `count` re-solves that use a share of the time left: rounds of search by a trial of
 * the campus as it is, the same for all, so that none gets more work than another; all led by the same
 * prices.
 */
export async function fairEffort(
  asked: Asked,
  { count, share }: { readonly count: number; readonly share: number },
): Promise<Effort> {
  const { effort, resolver } = asked;
  if (effort !== 'timed' && effort.kind === 'proven') return effort;
  const { guide, pace } = await tryPace(asked);
  if (effort !== 'timed') return { ...effort, ...guide };
  if (!pace) return { kind: 'rounds', rounds: UNTIMED_ROUNDS, ...guide };
  const each = (resolver.secondsLeft() * share * resolver.parallel) / Math.max(1, count);
  const rounds = Math.floor((each - Math.max(LEAST_SECONDS, pace.setUp)) / pace.round);
  return {
    kind: 'rounds',
    rounds: Math.max(LEAST_ROUNDS, Math.min(MOST_ROUNDS, rounds)),
    ...guide,
  };
}

/** How numbers of equal effort were found, in one sentence. */
export function madeBy(effort: Effort, seeds: readonly number[], skipped: readonly string[]): Made {
  const rounds = effort.kind === 'rounds' ? effort.rounds : null;
  const also = seeds.length > 1 ? `, those near the best with ${seeds.length} seeds` : '';
  const sentence =
    rounds === null
      ? 'Each was solved until proven.'
      : `Each was planned again from this plan with ${counted(rounds, 'round')} of search and the same seed${also}; found, not proven.`;
  return { rounds, seeds, skipped, sentence };
}
