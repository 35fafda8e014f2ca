import type { Ground } from '../columns/add-columns.js';
import { Board } from '../solve/board.js';
import { secondsLimit } from '../solve/budget.js';
import type { Incumbent } from '../solve/incumbent.js';
import { boundByCounts } from '../solve/bound-by-counts.js';
import { Relaxations } from '../solve/part-solve.js';
import { quietSurroundings } from '../solve/quiet-surroundings.js';
import { tierResult } from '../solve/tier-report.js';
import { tiersOf } from '../tiers/tier-list.js';
import type { ResolveOrder } from './order.js';
import type { ResolveMeans } from './means.js';

/** Nodes of a tree over counts for one tier. */
const COUNT_NODES = 100;

/** Share of the time left that one tier before benefit may take, where time is limited. */
const EARLY_SHARE = 0.5;

/**
 * How good a plan could be in each tier up to benefit, with the tiers before it held at a plan's
 * values: so a bound holds for plans that are as good in those. By relaxation, and before benefit by
 * counts as well.
 */
export function tierBounds(
  ground: Ground,
  of: { readonly best: Incumbent; readonly order: ResolveOrder; readonly means: ResolveMeans },
): (number | null)[] {
  const { best, order } = of;
  const tiers = tiersOf(ground.campus);
  const board = boardFor(ground, of);
  board.best = best;
  for (const [place, bound] of (order.known ?? []).entries()) {
    if (bound !== null) board.noteBound({ place, held: board.held(place), bound });
  }
  const relaxations = new Relaxations(board);
  for (let place = 0; place <= board.benefit && !board.shouldStop(); place++) {
    const isKnown = place < board.benefit && (order.known?.[place] ?? null) !== null;
    if (isKnown || board.closeEnough(place)) continue;
    relaxations.of(place, secondsLimit(board.secondsLeft()));
    if (place === board.benefit || board.closeEnough(place) || board.shouldStop()) continue;
    const seconds = board.secondsLeft() * EARLY_SHARE;
    boundByCounts(board, place, { seconds, nodes: COUNT_NODES });
  }
  return tiers.map((tier, place) => {
    if (place > board.benefit) return null;
    return tierResult(tier, best.values[place] ?? 0, board.bounds.of(place, best.values)).bound;
  });
}

function boardFor(
  ground: Ground,
  { order, means }: { readonly order: ResolveOrder; readonly means: ResolveMeans },
): Board {
  const { seed, seconds } = order;
  const on = { ground, tiers: tiersOf(ground.campus), solver: means.solver };
  return new Board(on, {
    settings: { seed, ...(seconds === undefined ? {} : { seconds }) },
    around: quietSurroundings(means.elapsed),
  });
}
