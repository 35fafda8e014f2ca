import type { Campus } from '#domain/campus.js';
import type { Solver } from '#mip/solver.js';
import { adopt } from '../construct/adopt.js';
import { decisionsOf } from '../search/state.js';
import { Board } from './board.js';
import { isQuick, secondsLimit } from './budget.js';
import { groundOf } from '../columns/ground-of.js';
import { boundByCounts } from './bound-by-counts.js';
import { reachFor, Relaxations, solvePart } from './part-solve.js';
import type { SolveRun } from './settings.js';
import { Steps } from './steps.js';
import { tablesOf } from '../search/tables.js';
import { tiersOf } from '../tiers/tier-list.js';

/** Share of the whole time that proving one tier before benefit may take. */
const EARLY_SHARE = 0.4;

/** Seconds of plans before the first proof: of a dive, and of a search around what it found. */
const DIVE_SECONDS = 0.75;
const SEARCH_SECONDS = 4;

/** Share of the time left that each second of these may take at the most. */
const SECOND_SHARE = 1 / 60;

/** Share of a proof that goes into counts, before benefit and for benefit; the rest is the solver's. */
const EARLY_COUNTS_SHARE = 0.6;
const COUNTS_SHARE = 0.5;

/**
 * The second thread of a solve: relaxes benefit while the other makes the first plan, then proves tier by
 * tier that none is better, and tells each bound, and each plan that it comes upon. Ends where all tiers up to
 * benefit are proven.
 */
export function boundCampus(campus: Campus, solver: Solver, run: SolveRun): void {
  const tiers = tiersOf(campus);
  const board = new Board({ ground: groundOf(campus), tiers, solver }, run);
  const relaxations = new Relaxations(board);
  const givenUp = new Set<string>();
  if (isQuick(run.settings)) tellPrices(board, relaxations);
  else begin(board, relaxations);
  while (!board.shouldStop()) {
    board.hear();
    const place = openPlace(board, givenUp);
    if (place === undefined) run.around.partner?.pause();
    else proveTier({ board, relaxations, givenUp }, place);
  }
}

/**
 * Relaxes benefit where all before it is kept in full, as it is in most plans, so that prices are there
 * soonest. Then makes plans near it in other ways than the first thread does: a proof can wait for better plans.
 */
function begin(board: Board, relaxations: Relaxations): void {
  const { benefit } = board;
  const held = board.keptInFull(benefit);
  const relaxation = relaxations.ahead(benefit, secondsLimit(board.secondsLeft()));
  if (!relaxation) return;
  board.tellPrices(benefit, relaxation, held);
  board.hear();
  if (!board.holds(held)) return;
  const steps = new Steps(board, tablesOf(board.on.ground));
  const second = Math.min(1, board.secondsLeft() * SECOND_SHARE);
  const near = { relaxation, held: board.heldTiers(benefit), seconds: DIVE_SECONDS * second };
  steps.dive(near, { seconds: SEARCH_SECONDS * second }, true);
}

/**
 * Where time is short: prices towards the next better promise, then of benefit, as soon as there are any. An
 * earlier plan is taken up here too, rather than waited for.
 */
function tellPrices(board: Board, relaxations: Relaxations): void {
  const { start } = board.run;
  const adopted = start && adopt(tablesOf(board.on.ground), start);
  if (adopted) board.offerUnsure(decisionsOf(adopted));
  while (!board.best && !board.shouldStop()) {
    board.run.around.partner?.pause();
    board.hear();
  }
  const limits = () => secondsLimit(board.secondsLeft());
  for (let place = 0; place < board.benefit && !board.shouldStop(); place++) {
    const reach = reachFor(board, place, { goal: 'one-better', limits: limits() });
    if (!reach) continue;
    board.tellPrices(board.benefit, reach.relaxation);
    return;
  }
  const relaxation = board.shouldStop() ? undefined : relaxations.of(board.benefit, limits());
  if (relaxation) board.tellPrices(board.benefit, relaxation);
}

interface Proof {
  readonly board: Board;
  readonly relaxations: Relaxations;
  readonly givenUp: Set<string>;
}

function openPlace(board: Board, givenUp: ReadonlySet<string>): number | undefined {
  if (!board.best) return undefined;
  for (let place = 0; place <= board.benefit; place++) {
    if (!board.closeEnough(place) && !givenUp.has(board.question(place))) return place;
  }
  return undefined;
}

function proveTier({ board, relaxations, givenUp }: Proof, place: number): void {
  const key = board.question(place);
  const held = board.held(place);
  const total = board.run.settings.seconds ?? Infinity;
  const left = board.secondsLeft();
  const isEarly = place < board.benefit;
  const most = isEarly ? Math.min(left, total * EARLY_SHARE) : left;
  const seconds = most * (isEarly ? EARLY_COUNTS_SHARE : COUNTS_SHARE);
  const counted = boundByCounts(board, place, { seconds, nodes: Infinity });
  if (board.isOver(place, held)) return;
  const relaxation = counted ?? relaxations.of(place, secondsLimit(most));
  if (!relaxation || board.isOver(place, held)) return;
  const outcome = solvePart(board, place, {
    relaxation,
    most: Infinity,
    limits: secondsLimit(most - seconds),
  });
  const isOutOfTime = outcome.reason === 'time' || outcome.reason === 'work';
  if (isOutOfTime && key === board.question(place)) givenUp.add(key);
}
