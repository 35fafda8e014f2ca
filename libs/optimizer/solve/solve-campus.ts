import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { Ending, SolveReport } from '#domain/tier.js';
import type { Solver } from '#mip/solver.js';
import { adopt } from '../construct/adopt.js';
import { construct, RECIPES } from '../construct/construct.js';
import { pricesOf } from '../improve/prices.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import { tablesOf, type Tables } from '../search/tables.js';
import { tiersOf } from '../tiers/tier-list.js';
import {
  awaitPrices,
  DIVE_SECONDS,
  diveNear,
  relaxationNow,
  workBeside,
} from './beside-partner.js';
import { Board } from './board.js';
import { firstSearch, isQuick, lastSeconds, secondsLimit, TIER_SHARES } from './budget.js';
import { conflictSet } from './conflict-set.js';
import { groundOf } from '../columns/ground-of.js';
import { question, Relaxations } from './part-solve.js';
import { reachOut } from './reach-out.js';
import type { SolveRun } from './settings.js';
import { relaxationBound, solveTier, type Relaxation } from './solve-tier.js';
import { Steps } from './steps.js';
import { tierResult } from './tier-report.js';

export type { SolveRun } from './settings.js';

export interface SolveResult {
  readonly report: SolveReport;
  readonly plan?: Plan;
}

/** Seconds of one search where time is short and no better prices come meanwhile. */
const QUICK_SLICE = 1.2;

/** Share of the time left that a tier after benefit may take, and re-solves without gain that end it. */
const LAST_TIER_SHARE = 0.8;
const ENOUGH_RESOLVES = 8;

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
  readonly board: Board;
  readonly relaxations: Relaxations;
  readonly steps: Steps;
  private readonly tables: Tables;

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
    if (!this.mayRest())
      this.steps.search(firstSearch(this.run.settings, board.on.ground.lifecycles.length));
    if (!board.best && this.findAny() === 'no-plan') return this.noPlan();
    if (!board.best) return this.ended('-without-plan');
    if (this.isQuick()) this.searchQuickly();
    else this.workThrough();
    this.steps.makeLean();
    for (let place = board.benefit + 1; place < board.on.tiers.length; place++) this.polish(place);
    return this.ended('');
  }

  private workThrough(): void {
    for (let place = 0; place < this.board.benefit; place++) this.workOnEarly(place);
    this.workOnBenefit();
  }

  /** Whether there is no time to relax and solve here: then the partner tells prices. */
  private isQuick(): boolean {
    const { settings, around } = this.run;
    return around.partner !== undefined && isQuick(settings);
  }

  private searchQuickly(): void {
    const { board, steps } = this;
    while (!steps.isDone(board.benefit)) {
      const { prices } = board;
      const enough = () => {
        board.hear();
        return board.prices !== prices;
      };
      steps.search({ seconds: QUICK_SLICE, enough }, prices);
    }
  }

  private constructFirst(): void {
    const { start } = this.run;
    if (start) this.keepIfSound(adopt(this.tables, start));
    if (this.board.best && this.isQuick()) return;
    for (const recipe of RECIPES) {
      if (this.board.shouldStop() || this.mayRest()) return;
      this.keepIfSound(construct(this.tables, recipe));
    }
  }

  /** Whether there is but benefit to better, and a partner that will soon tell what sites are worth. */
  private mayRest(): boolean {
    const { board, run } = this;
    const keepsAll = board.best !== undefined && board.holds(board.keptInFull(board.benefit));
    return keepsAll && run.around.partner !== undefined && !this.isQuick();
  }

  private keepIfSound(state: SearchState | undefined): void {
    if (state) this.board.offerUnsure(decisionsOf(state));
  }

  /** Where no search found a plan: the solver finds one or proves that there is none. */
  private findAny(): 'no-plan' | 'open' {
    const { board } = this;
    if (board.shouldStop()) return 'open';
    const limits = {
      ...secondsLimit(board.secondsLeft()),
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
    reachOut(this, place, seconds);
    if (partner || this.steps.isDone(place)) return;
    const relaxation = this.relaxations.of(place, secondsLimit(seconds));
    if (!relaxation || this.steps.isDone(place)) return;
    const until = this.run.around.elapsed() + seconds;
    this.steps.core(place, relaxation, seconds * TIER_SHARES.core);
    this.steps.smallParts(place, relaxation, seconds * TIER_SHARES.parts);
    this.steps.whole(place, relaxation, until - this.run.around.elapsed());
  }

  private workOnBenefit(): void {
    const { board, steps } = this;
    const place = board.benefit;
    const left = () => board.secondsLeft() - lastSeconds(this.run.settings);
    if (this.run.around.partner) awaitPrices(this, left());
    const relaxed = () => relaxationNow(this, left());
    if (steps.isDone(place) || !relaxed()) return;
    if (this.run.around.partner) return workBeside(this, left);
    const shares = left();
    const onRelaxation = (step: (r: Relaxation) => void) => {
      const relaxation = steps.isDone(place) ? undefined : relaxed();
      if (relaxation) step(relaxation);
    };
    onRelaxation((r) => diveNear(this, r, Math.min(DIVE_SECONDS, shares * TIER_SHARES.dive)));
    onRelaxation((r) => steps.search(steps.pause(shares * TIER_SHARES.search), pricesOf(r)));
    onRelaxation((r) => steps.nearPeople(place, r, shares * TIER_SHARES.nearPeople));
    onRelaxation((r) => steps.core(place, r, shares * TIER_SHARES.core));
    onRelaxation((r) => steps.smallParts(place, r, shares * TIER_SHARES.parts));
    onRelaxation((r) => steps.whole(place, r, left()));
  }

  /** Improves a tier after benefit; of these only change from the published plan is bounded. */
  private polish(place: number): void {
    if (this.steps.isDone(place)) return;
    if (this.board.on.tiers[place]?.name === 'change')
      this.relaxations.of(place, secondsLimit(this.board.secondsLeft() * BOUND_CHANGE_SHARE));
    if (!this.steps.isDone(place))
      this.steps.improve(place, {
        seconds: this.board.secondsLeft() * LAST_TIER_SHARE,
        enough: ENOUGH_RESOLVES,
      });
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
