import type { Effort, ResolveOrder } from '#optimizer/resolve/order.js';
import type { Asked } from './asked.js';

/** Rounds of the trial by which the time of a round is measured. */
const TRIAL_ROUNDS = 40;

/** Shares of the time left that prices, and each trial, may take: without them the search goes on as well. */
const PRICES_SHARE = 0.3;
const TRIAL_SHARE = 0.12;

/** How fast re-solves of a campus go, by a trial of the campus as it is. */
export interface Pace {
  /** Seconds of one round of search. */
  readonly round: number;
  /** Seconds of a re-solve before its first round. */
  readonly setUp: number;
  /** Seconds of one relaxation of benefit, with its set-up. */
  readonly relaxation: number;
}

type Guided = Extract<Effort, { kind: 'rounds' }>;

/** What every re-solve of a question is led by, and how fast they go; no pace where nobody waits. */
export async function tryPace(
  asked: Asked,
): Promise<{ readonly guide: Pick<Guided, 'prices'>; readonly pace?: Pace }> {
  const { effort, resolver } = asked;
  const left = resolver.secondsLeft();
  const order = (
    rounds: number,
    share: number,
    wish: ResolveOrder['wish'] = 'best',
  ): ResolveOrder => ({
    campus: asked.campus,
    start: asked.plan.decisions,
    seed: asked.seed,
    effort: { kind: 'rounds', rounds },
    ...(Number.isFinite(left) ? { seconds: left * share } : {}),
    wish,
  });
  const timed = effort === 'timed' && Number.isFinite(resolver.secondsLeft());
  // A thread is slow at first, so the last trials count; they run while the prices are worked out.
  const trials = timed ? [TRIAL_ROUNDS, 0, TRIAL_ROUNDS].map((n) => order(n, TRIAL_SHARE)) : [];
  const [priced, , bare, tried] = await resolver.resolve([
    order(0, PRICES_SHARE, 'prices'),
    ...trials,
  ]);
  const guide = priced?.prices ? { prices: priced.prices } : {};
  if (!timed) return { guide };
  const [before, after] = [bare?.seconds ?? 0, tried?.seconds ?? 0];
  const round = Math.max(0.001, (after - before) / Math.max(1, tried?.rounds ?? 0));
  return { guide, pace: { round, setUp: before, relaxation: priced?.seconds ?? 0 } };
}
