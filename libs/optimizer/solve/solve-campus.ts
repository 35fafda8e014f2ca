import type { Campus } from '#domain/campus.js';
import { NO_DECISIONS, type Decisions, type Plan } from '#domain/plan.js';
import type { Ending, SolveReport, TierResult } from '#domain/tier.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Solver } from '#mip/solver.js';
import { seededRandom } from '#units/random.js';
import type { Ground } from '../columns/add-columns.js';
import { possibleLifecycles } from '../columns/lifecycles.js';
import { adopt } from '../construct/adopt.js';
import { construct, RECIPES } from '../construct/construct.js';
import { improve } from '../improve/improve.js';
import { ruinAndRecreate } from '../improve/ruin-and-recreate.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import { stateOf } from '../search/state-of.js';
import { tablesOf, type Tables } from '../search/tables.js';
import { benefitPlace, tiersOf, type Tier } from '../tiers/tier-list.js';
import { compareTiers } from '../tiers/tier-values.js';
import { improvementBudget, searchBudget, wholeLimits, type TierPlace } from './budget.js';
import { conflictSet } from './conflict-set.js';
import { judgeDecisions, verifiedIncumbent, type Incumbent } from './incumbent.js';
import type { SolveSettings, SolveSurroundings } from './settings.js';
import { relaxationBound, solveTier, type TierOutcome } from './solve-tier.js';
import { tierResult } from './tier-report.js';

export interface SolveResult {
  readonly report: SolveReport;
  readonly plan?: Plan;
}

export interface SolveRun {
  readonly settings: SolveSettings;
  readonly around: SolveSurroundings;
  /** Decisions of an earlier plan to begin from; what the campus no longer admits is mended. */
  readonly start?: Decisions;
}

/** Solves a campus tier by tier. Blocks its thread, so it belongs in a worker. */
export function solveCampus(campus: Campus, solver: Solver, run: SolveRun): SolveResult {
  return new CampusSolve(campus, solver, run).solve();
}

class CampusSolve {
  private readonly ground: Ground;
  private readonly tables: Tables;
  private readonly tiers: readonly Tier[];
  private best: Incumbent | undefined;
  private readonly results: TierResult[] = [];
  private stopped: 'time' | 'work' | 'cancelled' | undefined;

  constructor(
    private readonly campus: Campus,
    private readonly solver: Solver,
    private readonly run: SolveRun,
  ) {
    const charges = campusCharges(campus);
    this.ground = { campus, charges, lifecycles: possibleLifecycles(campus, charges) };
    this.tables = tablesOf(this.ground);
    this.tiers = tiersOf(campus);
  }

  solve(): SolveResult {
    this.constructFirst();
    this.search();
    for (const [place, tier] of this.tiers.entries()) {
      if (this.solveOne(place, tier) === 'no-plan') return this.noPlan();
      if (!this.best) return this.ended('-without-plan');
    }
    return this.ended('');
  }

  private constructFirst(): void {
    const { start } = this.run;
    if (start) this.keepIfSound(adopt(this.tables, start));
    for (const recipe of RECIPES) {
      if (this.shouldStop()) return;
      this.keepIfSound(construct(this.tables, recipe));
    }
  }

  private keepIfSound(state: SearchState | undefined): void {
    if (!state) return;
    const judged = judgeDecisions(this.campus, decisionsOf(state), this.ground.charges);
    if (judged.objections.length === 0) this.keepBetter(judged.incumbent);
  }

  /** Searches around the best plan, all tiers at once. */
  private search(): void {
    if (!this.best) return;
    const { settings, around } = this.run;
    const { seconds, rounds } = searchBudget(settings);
    ruinAndRecreate(stateOf(this.tables, this.best.plan.decisions), {
      random: seededRandom(settings.seed),
      rounds,
      done: () => this.shouldStop() || around.elapsed() >= seconds,
      onBetter: (state) => {
        this.offer(decisionsOf(state));
        this.report(benefitPlace(this.tiers), null);
      },
    });
  }

  /** Takes decisions that a search or the solver calls feasible; true where they are the best so far. */
  private offer(decisions: Decisions): boolean {
    const found = verifiedIncumbent(this.campus, decisions, this.ground.charges);
    return found !== undefined && this.keepBetter(found);
  }

  private keepBetter(found: Incumbent): boolean {
    if (this.best && compareTiers(this.campus, found.values, this.best.values) >= 0) return false;
    this.best = found;
    this.run.around.onPlan(found.plan, found.values);
    return true;
  }

  private solveOne(place: number, tier: Tier): 'no-plan' | 'solved' {
    const value = this.best?.values[place];
    const atBest = value !== undefined && tier.sense === 'min' && value <= tier.tolerance;
    if (value !== undefined && (atBest || this.shouldStop())) {
      const early = place < benefitPlace(this.tiers);
      this.results.push(tierResult(tier, value, early ? 0 : null));
      return 'solved';
    }
    if (this.shouldStop()) return 'solved';
    const floor = place < benefitPlace(this.tiers) ? 0 : null;
    const relaxed = this.best ? (this.improveTier(place, tier) ?? floor) : null;
    if (this.best && !this.worthWhole(place, relaxed)) {
      this.results.push(tierResult(tier, this.best.values[place] ?? 0, relaxed));
      return 'solved';
    }
    if (!this.best && this.relaxationIsImpossible(place, tier)) return 'no-plan';
    const outcome = this.solveWhole(place, tier);
    if (outcome.ended === 'infeasible') return this.infeasible(tier);
    if (outcome.decisions) this.offer(outcome.decisions);
    this.noteStop(outcome);
    const reached = this.best?.values[place];
    if (reached !== undefined) {
      this.results.push(tierResult(tier, reached, tighter(tier, outcome.bound, relaxed)));
    }
    return 'solved';
  }

  /**
   * The whole model is solved where there is no plan yet, and for benefit where a bound is wanted;
   * in repeatable and in short runs its root alone would take the time of all other tiers.
   */
  private worthWhole(place: number, relaxed: number | null): boolean {
    const tier = this.tiers[place];
    if (!tier || place > benefitPlace(this.tiers) || this.closeEnough(place, relaxed)) return false;
    const { work, seconds } = this.run.settings;
    if (work !== undefined) return false;
    return seconds === undefined || tier.name === 'benefit';
  }

  /** Bounds a tier by its relaxation and re-solves parts of the plan until the bound or its time is reached. */
  private improveTier(place: number, tier: Tier): number | null {
    const { settings, around } = this.run;
    const { seconds, rounds } = improvementBudget(this.placeOf(place));
    const until = around.elapsed() + seconds;
    const common = { ...this.common(place, tier), shouldStop: () => this.shouldStop() };
    const wantsBound = place <= benefitPlace(this.tiers);
    const limits = Number.isFinite(seconds) ? { seconds: Math.max(0.5, seconds) } : {};
    const bound = wantsBound ? relaxationBound({ ...common, limits }) : null;
    if (bound === 'infeasible') throw contradiction(tier);
    this.report(place, bound);
    improve({
      ...common,
      random: seededRandom(settings.seed * 1000 + place),
      best: () => this.best?.plan.decisions ?? NO_DECISIONS,
      take: (decisions) => {
        const better = this.offer(decisions);
        if (better) this.report(place, bound);
        return better;
      },
      done: () => this.closeEnough(place, bound),
      secondsLeft: () => until - around.elapsed(),
      ...(rounds === undefined ? {} : { rounds }),
    });
    return bound;
  }

  /** Where even fractions of sites and people keep no rule, whole ones cannot; and that is soon known. */
  private relaxationIsImpossible(place: number, tier: Tier): boolean {
    const limits = wholeLimits(this.placeOf(place));
    const shouldStop = () => this.shouldStop();
    return relaxationBound({ ...this.common(place, tier), shouldStop, limits }) === 'infeasible';
  }

  private solveWhole(place: number, tier: Tier): TierOutcome {
    let bound: number | null = null;
    this.report(place, bound);
    return solveTier({
      ...this.common(place, tier),
      limits: wholeLimits(this.placeOf(place)),
      ...(this.best ? { start: this.best.plan.decisions } : {}),
      shouldStop: () => this.shouldStop(),
      onBound: (found) => {
        bound = found;
        this.report(place, bound);
      },
      onDecisions: (decisions) => {
        this.offer(decisions);
        this.report(place, bound);
      },
    });
  }

  private common(place: number, tier: Tier) {
    const { ground, solver } = this;
    const values = this.best?.values ?? [];
    const held = new Map(this.tiers.slice(0, place).map((t, i) => [t.name, values[i] ?? 0]));
    return { ground, solver, tier: tier.name, held, seed: this.run.settings.seed };
  }

  private placeOf(place: number): TierPlace {
    const elapsed = this.run.around.elapsed();
    return { place, tiers: this.tiers, settings: this.run.settings, elapsed };
  }

  /** Proven, or within the gap that was asked for. */
  private closeEnough(place: number, bound: number | null): boolean {
    const tier = this.tiers[place];
    const value = this.best?.values[place] ?? 0;
    if (!tier || tierResult(tier, value, bound).proven) return true;
    const { gap } = this.run.settings;
    if (gap === undefined || bound === null || tier.name !== 'benefit') return false;
    return Math.abs(value - bound) <= gap * Math.max(1, Math.abs(value));
  }

  private report(place: number, bound: number | null): void {
    const tier = this.tiers[place];
    if (!tier) return;
    const objective = this.best?.values[place] ?? null;
    const shown = tierResult(tier, objective ?? 0, bound);
    const gap = objective === null ? null : shown.gap;
    this.run.around.onProgress({ tier: tier.name, objective, bound: shown.bound, gap });
  }

  /** Only where no plan is in hand can it turn out that there is none. */
  private infeasible(tier: Tier): 'no-plan' {
    if (this.best) throw contradiction(tier);
    return 'no-plan';
  }

  private noteStop({ reason }: TierOutcome): void {
    if (reason) this.stopped = reason === 'interrupted' ? this.stopReason() : reason;
  }

  private shouldStop(): boolean {
    const { seconds } = this.run.settings;
    const { around } = this.run;
    return around.shouldStop() || (seconds !== undefined && around.elapsed() >= seconds);
  }

  private stopReason(): 'time' | 'work' | 'cancelled' {
    if (this.run.around.shouldStop()) return 'cancelled';
    const { seconds, work } = this.run.settings;
    const timeIsUp = seconds !== undefined && this.run.around.elapsed() >= seconds;
    return work === undefined || timeIsUp ? 'time' : 'work';
  }

  private noPlan(): SolveResult {
    const conflict = conflictSet(this.campus, this.solver, this.run);
    return { report: { ending: 'no-plan', tiers: [], conflict } };
  }

  private ended(suffix: '' | '-without-plan'): SolveResult {
    const upToBenefit = this.results.slice(0, benefitPlace(this.tiers) + 1);
    const proven = suffix === '' && upToBenefit.every((t) => t.proven);
    const reason = this.stopped ?? this.stopReason();
    const how = reason === 'cancelled' ? reason : (`${reason}-limit` as const);
    const ending: Ending = proven ? 'proven' : `${how}${suffix}`;
    return {
      report: { ending, tiers: this.results, conflict: [] },
      ...(this.best ? { plan: this.best.plan } : {}),
    };
  }
}

function contradiction(tier: Tier): Error {
  return new Error(`the solver calls ${tier.name} infeasible while a verified plan is in hand`);
}

/** The better of two bounds. */
function tighter(tier: Tier, a: number | null, b: number | null): number | null {
  if (a === null || b === null) return a ?? b;
  return tier.sense === 'min' ? Math.max(a, b) : Math.min(a, b);
}
