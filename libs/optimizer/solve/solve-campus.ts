import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { Ending, SolveReport } from '#domain/tier.js';
import type { Solver } from '#mip/solver.js';
import { adopt } from '../construct/adopt.js';
import { construct, RECIPES } from '../construct/construct.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import { tablesOf, type Tables } from '../search/tables.js';
import { tiersOf } from '../tiers/tier-list.js';
import { Board } from './board.js';
import { coreLimits, firstSearch, lastSeconds, secondsLimit } from './budget.js';
import { conflictSet } from './conflict-set.js';
import { groundOf } from './ground-of.js';
import { question, reachFor, Relaxations, solveReach } from './part-solve.js';
import type { SolveRun } from './settings.js';
import { relaxationBound, solveTier } from './solve-tier.js';
import { Steps } from './steps.js';
import { tierResult } from './tier-report.js';

export type { SolveRun } from './settings.js';

export interface SolveResult {
  readonly report: SolveReport;
  readonly plan?: Plan;
}

/** Seconds of one solve among few lives, and of the re-solves and the search between two of them. */
const CORE_SECONDS = 8;
const PARTS_SECONDS = 4;
const SEARCH_SECONDS = 5;

/** Shares of a tier's time for its core and for small parts; the rest is for the whole. */
const CORE_SHARE = 0.3;
const PARTS_SHARE = 0.15;
const SEARCH_SHARE = 0.3;

/** Share of the time left at the end for a bound of the change from the published plan. */
const BOUND_CHANGE_SHARE = 0.4;

/** Share of the time left that one tier before benefit may take, alone and beside a partner. */
const EARLY_SHARE = 0.3;
const EARLY_SHARE_OF_TWO = 0.15;

/**
 * Solves a campus tier by tier. Blocks its thread, so it belongs in a worker. Where a partner bounds in
 * a second thread, this one leaves the proofs to it and looks for better plans.
 */
export function solveCampus(campus: Campus, solver: Solver, run: SolveRun): SolveResult {
  return new CampusSolve(campus, solver, run).solve();
}

class CampusSolve {
  private readonly board: Board;
  private readonly tables: Tables;
  private readonly relaxations: Relaxations;
  private readonly steps: Steps;

  constructor(
    private readonly campus: Campus,
    private readonly solver: Solver,
    private readonly run: SolveRun,
  ) {
    const ground = groundOf(campus);
    this.board = new Board({ ground, tiers: tiersOf(campus), solver }, run);
    this.tables = tablesOf(ground);
    this.relaxations = new Relaxations(this.board);
    this.steps = new Steps(this.board, this.tables);
  }

  solve(): SolveResult {
    const { board } = this;
    this.constructFirst();
    this.steps.search(firstSearch(this.run.settings));
    if (!board.best && this.findAny() === 'no-plan') return this.noPlan();
    if (!board.best) return this.ended('-without-plan');
    for (let place = 0; place < board.benefit; place++) this.workOnEarly(place);
    this.workOnBenefit();
    for (let place = board.benefit + 1; place < board.on.tiers.length; place++) this.polish(place);
    return this.ended('');
  }

  private constructFirst(): void {
    const { start } = this.run;
    if (start) this.keepIfSound(adopt(this.tables, start));
    for (const recipe of RECIPES) {
      if (this.board.shouldStop()) return;
      this.keepIfSound(construct(this.tables, recipe));
    }
  }

  private keepIfSound(state: SearchState | undefined): void {
    if (state) this.board.offerUnsure(decisionsOf(state));
  }

  /** Where no search found a plan: the solver finds one or proves that there is none. */
  private findAny(): 'no-plan' | 'open' {
    const { board } = this;
    if (board.shouldStop()) return 'open';
    const seconds = board.secondsLeft();
    const limits = {
      ...(Number.isFinite(seconds) ? { seconds: Math.max(0.1, seconds) } : {}),
      ...(this.run.settings.work === undefined ? {} : { nodes: this.run.settings.work }),
    };
    const first = { ...question(board, 0), limits };
    if (relaxationBound(first) === 'infeasible') return 'no-plan';
    const outcome = solveTier({
      ...first,
      onBound: (bound) => board.noteBound({ place: 0, held: [], bound }),
      onDecisions: (decisions) => board.offer(decisions),
    });
    if (outcome.ended === 'infeasible') return 'no-plan';
    if (outcome.decisions) board.offer(outcome.decisions);
    return 'open';
  }

  /** Improves one tier before benefit with a share of the time, and proves it where nobody else does. */
  private workOnEarly(place: number): void {
    const { board } = this;
    const { partner } = this.run.around;
    if (this.steps.isDone(place)) return;
    const seconds = board.secondsLeft() * (partner ? EARLY_SHARE_OF_TWO : EARLY_SHARE);
    if (this.reachOut(place, seconds)) return;
    const relaxation = this.relaxations.of(place, secondsLimit(seconds));
    if (!relaxation || this.steps.isDone(place)) return;
    const until = this.run.around.elapsed() + seconds;
    this.steps.core(place, relaxation, seconds * CORE_SHARE);
    this.steps.smallParts(place, relaxation, seconds * PARTS_SHARE);
    if (!partner) this.steps.whole(place, relaxation, until - this.run.around.elapsed());
  }

  /** For a tier that counts sites: goes for one better until that fails; true where it is done with. */
  private reachOut(place: number, seconds: number): boolean {
    const { board } = this;
    const until = this.run.around.elapsed() + seconds;
    for (;;) {
      const left = until - this.run.around.elapsed();
      const reach = left > 0 ? reachFor(board, place, secondsLimit(left)) : undefined;
      if (!reach) break;
      const before = board.best?.values[place];
      this.steps.search(this.steps.pause(left * SEARCH_SHARE), reach.relaxation);
      if (board.best?.values[place] !== before) continue;
      const limits = coreLimits(this.run.settings, left * CORE_SHARE);
      solveReach(board, place, { ...reach, most: this.steps.lives, limits });
      if (board.best?.values[place] === before) break;
    }
    return this.steps.isDone(place) || this.run.around.partner !== undefined;
  }

  private workOnBenefit(): void {
    const { board } = this;
    const place = board.benefit;
    const keep = lastSeconds(this.run.settings);
    const left = () => board.secondsLeft() - keep;
    while (!this.steps.isDone(place) && left() > 0) {
      const relaxation = this.relaxations.of(place, secondsLimit(left()));
      if (!relaxation || this.steps.isDone(place)) return;
      const share = (most: number, part: number) =>
        this.run.around.partner ? Math.min(most, left()) : left() * part;
      this.steps.search(this.steps.pause(share(SEARCH_SECONDS, SEARCH_SHARE / 2)), relaxation);
      this.steps.core(place, relaxation, share(CORE_SECONDS, CORE_SHARE));
      this.steps.smallParts(place, relaxation, share(PARTS_SECONDS, PARTS_SHARE));
      if (this.run.around.partner) continue;
      this.steps.whole(place, relaxation, left());
      return;
    }
  }

  /** Improves a tier after benefit; of these only change from the published plan is bounded. */
  private polish(place: number): void {
    if (this.steps.isDone(place)) return;
    if (this.board.on.tiers[place]?.name === 'change')
      this.relaxations.of(place, secondsLimit(this.board.secondsLeft() * BOUND_CHANGE_SHARE));
    if (!this.steps.isDone(place))
      this.steps.improve(place, { seconds: this.board.secondsLeft() * 0.8 });
  }

  private noPlan(): SolveResult {
    const conflict = conflictSet(this.campus, this.solver, this.run);
    return { report: { ending: 'no-plan', tiers: [], conflict } };
  }

  private ended(suffix: '' | '-without-plan'): SolveResult {
    const { board } = this;
    board.hear();
    const values = board.best?.values ?? [];
    const tiers = board.best
      ? board.on.tiers.map((tier, place) =>
          tierResult(tier, values[place] ?? 0, board.bounds.of(place, values)),
        )
      : [];
    const proven = suffix === '' && tiers.slice(0, board.benefit + 1).every((tier) => tier.proven);
    const why = this.run.around.shouldStop() ? 'cancelled' : this.limitReached();
    const ending: Ending = proven ? 'proven' : `${why}${suffix}`;
    return {
      report: { ending, tiers, conflict: [] },
      ...(board.best ? { plan: board.best.plan } : {}),
    };
  }

  private limitReached(): 'time-limit' | 'work-limit' {
    const { work } = this.run.settings;
    return work === undefined || this.board.shouldStop() ? 'time-limit' : 'work-limit';
  }
}
