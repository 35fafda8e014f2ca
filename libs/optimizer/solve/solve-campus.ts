import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { NO_DECISIONS } from '#domain/plan.js';
import type { Ending, SolveReport } from '#domain/tier.js';
import type { Solver } from '#mip/solver.js';
import { seededRandom, type Random } from '#units/random.js';
import { adopt } from '../construct/adopt.js';
import { construct, RECIPES } from '../construct/construct.js';
import { improve } from '../improve/improve.js';
import type { Prices } from '../improve/ranking.js';
import { ruinAndRecreate } from '../improve/ruin-and-recreate.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import { stateOf } from '../search/state-of.js';
import { tablesOf, type Tables } from '../search/tables.js';
import { tiersOf } from '../tiers/tier-list.js';
import { Board } from './board.js';
import { coreLimits, firstSearch, lastSeconds, smallParts, type Budget } from './budget.js';
import { conflictSet } from './conflict-set.js';
import { groundOf } from './ground-of.js';
import { question, Relaxations, solvePart } from './part-solve.js';
import { restricted } from './restricted.js';
import type { SolveRun } from './settings.js';
import { relaxationBound, solveTier, type Relaxation } from './solve-tier.js';
import { tierResult } from './tier-report.js';

export type { SolveRun } from './settings.js';

export interface SolveResult {
  readonly report: SolveReport;
  readonly plan?: Plan;
}

/** Lives that a solve among the cheapest chooses from; doubled where that is solved to its end. */
const CORE_LIVES = 700;

/** Seconds of one solve among few lives, and of the re-solves and the search between two of them. */
const CORE_SECONDS = 10;
const PARTS_SECONDS = 4;
const SEARCH_SECONDS = 2;

/** Shares of a tier's time for its core and for small parts; the rest is for the whole. */
const CORE_SHARE = 0.3;
const PARTS_SHARE = 0.15;

/** Share of the time left at the end for a bound of the change from the published plan. */
const BOUND_CHANGE_SHARE = 0.4;

/** Share of the time left that one tier before benefit may take. */
const EARLY_SHARE = 0.3;

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
  private readonly random: Random;
  private lives = CORE_LIVES;

  constructor(
    private readonly campus: Campus,
    private readonly solver: Solver,
    private readonly run: SolveRun,
  ) {
    const ground = groundOf(campus);
    this.board = new Board({ ground, tiers: tiersOf(campus), solver }, run);
    this.tables = tablesOf(ground);
    this.relaxations = new Relaxations(this.board);
    this.random = seededRandom(run.settings.seed);
  }

  solve(): SolveResult {
    const { board } = this;
    this.constructFirst();
    this.search(firstSearch(this.run.settings));
    if (!board.best && this.findAny() === 'no-plan') return this.noPlan();
    if (!board.best) return this.ended('-without-plan');
    if (!this.run.around.partner) {
      for (let place = 0; place < board.benefit; place++) this.workOnEarly(place);
    }
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

  /** Searches around the best plan, all tiers at once. */
  private search({ seconds = Infinity, rounds = Infinity }: Budget, relaxation?: Relaxation): void {
    const { board } = this;
    if (!board.best) return;
    const until = this.run.around.elapsed() + seconds;
    ruinAndRecreate(stateOf(this.tables, board.best.plan.decisions), {
      random: this.random,
      rounds,
      done: () => board.shouldStop() || this.run.around.elapsed() >= until,
      onBetter: (state) => {
        if (board.offer(decisionsOf(state))) board.report(board.benefit);
      },
      ...(relaxation ? { prices: pricesOf(relaxation) } : {}),
    });
    board.hear();
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

  /** Proves and improves one tier before benefit with a share of the time. */
  private workOnEarly(place: number): void {
    const { board } = this;
    if (this.isDone(place)) return;
    const seconds = board.secondsLeft() * EARLY_SHARE;
    const relaxation = this.relaxations.of(place, secondsLimit(seconds));
    if (!relaxation || this.isDone(place)) return;
    const until = this.run.around.elapsed() + seconds;
    this.core(place, relaxation, seconds * CORE_SHARE);
    this.smallParts(place, relaxation, seconds * PARTS_SHARE);
    this.whole(place, relaxation, until - this.run.around.elapsed());
  }

  private workOnBenefit(): void {
    const { board } = this;
    const place = board.benefit;
    const keep = lastSeconds(this.run.settings);
    const left = () => board.secondsLeft() - keep;
    while (!this.isDone(place) && left() > 0) {
      const relaxation = this.relaxations.of(place, secondsLimit(left()));
      if (!relaxation || this.isDone(place)) return;
      const share = (most: number, part: number) =>
        this.run.around.partner ? Math.min(most, left()) : left() * part;
      this.search(this.pause(share(SEARCH_SECONDS, PARTS_SHARE / 2)), relaxation);
      this.core(place, relaxation, share(CORE_SECONDS, CORE_SHARE));
      this.smallParts(place, relaxation, share(PARTS_SECONDS, PARTS_SHARE));
      if (this.run.around.partner) continue;
      this.whole(place, relaxation, left());
      return;
    }
  }

  /** A search between two solves: as long as time is limited, or some rounds. */
  private pause(seconds: number): Budget {
    const { work } = this.run.settings;
    if (work !== undefined) return { rounds: work };
    return Number.isFinite(seconds) ? { seconds } : { rounds: 0 };
  }

  private isDone(place: number): boolean {
    this.board.hear();
    return this.board.shouldStop() || this.board.closeEnough(place);
  }

  /** Solves a tier among the lives that cost its relaxation least. */
  private core(place: number, relaxation: Relaxation, seconds: number): void {
    if (this.isDone(place)) return;
    const limits = coreLimits(this.run.settings, seconds);
    const outcome = solvePart(this.board, place, { relaxation, most: this.lives, limits });
    if (outcome.ended === 'optimal' && !outcome.exact) this.lives *= 2;
  }

  /** Solves a tier among all lives that a better plan may have. Repeatable runs leave it out. */
  private whole(place: number, relaxation: Relaxation, seconds: number): void {
    if (this.isDone(place) || this.run.settings.work !== undefined) return;
    const limits = { ...secondsLimit(seconds), relativeGap: this.run.settings.gap ?? 0 };
    solvePart(this.board, place, { relaxation, most: Infinity, limits });
  }

  /** Re-solves a few sites at a time, among the lives that cost the relaxation least. */
  private smallParts(place: number, relaxation: Relaxation, seconds: number): void {
    const { board } = this;
    const tier = board.on.tiers[place];
    if (this.isDone(place) || !board.best || !tier) return;
    const best = {
      decisions: board.best.plan.decisions,
      value: board.best.values[place] ?? 0,
    };
    const { ground } = restricted(board.on.ground, {
      tier,
      relaxation,
      best,
      most: 2 * this.lives,
    });
    this.improve(place, { ground, seconds });
  }

  private improve(
    place: number,
    { ground = this.board.on.ground, seconds }: { ground?: Board['on']['ground']; seconds: number },
  ): void {
    const { board } = this;
    const until = this.run.around.elapsed() + seconds;
    const { rounds } = smallParts(this.run.settings, seconds);
    improve({
      ...question(board, place),
      ground,
      random: this.random,
      best: () => board.best?.plan.decisions ?? NO_DECISIONS,
      take: (decisions) => {
        const better = board.offer(decisions);
        if (better) board.report(place);
        return better;
      },
      done: () => this.isDone(place),
      secondsLeft: () => until - this.run.around.elapsed(),
      ...(rounds === undefined ? {} : { rounds }),
    });
  }

  /** Improves a tier after benefit; of these only change from the published plan is bounded. */
  private polish(place: number): void {
    if (this.isDone(place)) return;
    if (this.board.on.tiers[place]?.name === 'change')
      this.relaxations.of(place, secondsLimit(this.board.secondsLeft() * BOUND_CHANGE_SHARE));
    if (!this.isDone(place)) this.improve(place, { seconds: this.board.secondsLeft() * 0.8 });
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

/** Share of the bound of benefit that is little for one site. */
const LITTLE = 0.004;

function pricesOf({ costOf, bound }: Relaxation): Prices {
  return { costOf: (life) => costOf.get(life) ?? 0, little: LITTLE * Math.abs(bound) };
}

function secondsLimit(seconds: number): { seconds?: number } {
  return Number.isFinite(seconds) ? { seconds: Math.max(0.1, seconds) } : {};
}
