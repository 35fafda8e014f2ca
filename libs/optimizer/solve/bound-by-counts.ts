import { proveByCounts, type CountProofOutcome } from '../counts/prove-by-counts.js';
import { readDecisions } from '../model/read-decisions.js';
import type { Board } from './board.js';
import { oneBetter, question } from './part-solve.js';
import type { Relaxation } from './solve-tier.js';
import { tighterBound } from './tier-report.js';

/** Seconds between two tellings of prices. */
const TELL_SECONDS = 0.2;

/** Share of one by which a count of sites must be better to be another. */
const DOUBT = 1e-6;

export interface CountBudget {
  readonly seconds: number;
  readonly nodes: number;
}

/**
 * Bounds a tier by branching on counts, and notes every bound on the way. `undefined`: the tier is
 * proven, another plan changed the question, or nothing was found in time.
 */
export function boundByCounts(
  board: Board,
  place: number,
  { seconds, nodes }: CountBudget,
): Relaxation | undefined {
  const tier = board.on.tiers[place];
  const value = board.best?.values[place];
  if (!tier || value === undefined) return undefined;
  const held = board.held(place);
  const { around } = board.run;
  const until = around.elapsed() + seconds;
  const over = () => board.isOver(place, held);
  const worth = () => {
    const now = board.best?.values[place] ?? value;
    const better = oneBetter(tier, now);
    return better === undefined ? now : better + DOUBT;
  };
  let tellFrom = around.elapsed();
  const proof = proveByCounts({
    ...question(board, place),
    worth,
    nodes,
    shouldStop: over,
    secondsLeft: () => until - around.elapsed(),
    onBound: (bound, outcome) => {
      if (!Number.isFinite(bound)) return;
      const before = board.bounds.of(place, board.best?.values ?? []);
      board.noteBound({ place, held, bound });
      const isNews = tighterBound(tier, bound, before) === bound;
      if (place !== board.benefit || !isNews || around.elapsed() < tellFrom) return;
      tellFrom = around.elapsed() + TELL_SECONDS;
      board.tellPrices(place, relaxationOf(board, outcome()));
    },
    onWhole: (values, { columns }) => board.offer(readDecisions(columns, values)),
  });
  if (!board.holds(held)) return undefined;
  if (proof === 'nothing-better') {
    board.noteBound({ place, held, bound: board.best?.values[place] ?? value });
    return undefined;
  }
  if (!Number.isFinite(proof.bound)) return undefined;
  board.noteBound({ place, held, bound: proof.bound });
  return relaxationOf(board, proof);
}

function relaxationOf(board: Board, of: CountProofOutcome): Relaxation {
  const { bound, withLife, costOf, valueOf, limits } = of;
  const byLife = (numbers: (index: number) => number) =>
    new Map(board.on.ground.lifecycles.map((l, i) => [l, numbers(i)] as const));
  return {
    bound,
    losesAtLeast: byLife((i) => Math.abs(bound - (withLife[i] ?? bound))),
    costOf: byLife((i) => costOf[i] ?? 0),
    valueOf: byLife((i) => valueOf[i] ?? 0),
    counted: { kinds: 'running', limits },
  };
}
