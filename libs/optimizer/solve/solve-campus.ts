import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { Ending, SolveReport, TierResult } from '#domain/tier.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Solver } from '#mip/solver.js';
import { seededRandom } from '#units/random.js';
import type { Ground } from '../columns/add-columns.js';
import { possibleLifecycles } from '../columns/lifecycles.js';
import { construct, RECIPES } from '../construct/construct.js';
import { decisionsOf } from '../search/state.js';
import { tablesOf } from '../search/tables.js';
import { benefitPlace, tiersOf, type Tier } from '../tiers/tier-list.js';
import { compareTiers } from '../tiers/tier-values.js';
import { improve } from '../improve/improve.js';
import { improvementBudget, tierBudget } from './budget.js';
import { conflictSet } from './conflict-set.js';
import { judgeDecisions, verifiedIncumbent, type Incumbent } from './incumbent.js';
import type { SolveSettings, SolveSurroundings } from './settings.js';
import { relaxationBound, solveTier, type TierOutcome } from './solve-tier.js';
import { tierResult } from './tier-report.js';

export interface SolveResult {
  readonly report: SolveReport;
  readonly plan?: Plan;
}

/** Solves a campus tier by tier. Blocks its thread, so it belongs in a worker. */
export function solveCampus(
  campus: Campus,
  solver: Solver,
  run: { readonly settings: SolveSettings; readonly around: SolveSurroundings },
): SolveResult {
  return new CampusSolve(campus, solver, run).solve();
}

class CampusSolve {
  private readonly ground: Ground;
  private readonly tiers: readonly Tier[];
  private best: Incumbent | undefined;
  private readonly results: TierResult[] = [];
  private stopped: 'time' | 'work' | 'cancelled' | undefined;

  constructor(
    private readonly campus: Campus,
    private readonly solver: Solver,
    private readonly run: { readonly settings: SolveSettings; readonly around: SolveSurroundings },
  ) {
    const charges = campusCharges(campus);
    this.ground = { campus, charges, lifecycles: possibleLifecycles(campus, charges) };
    this.tiers = tiersOf(campus);
  }

  solve(): SolveResult {
    this.constructFirst();
    for (const [place, tier] of this.tiers.entries()) {
      if (this.solveOne(place, tier) === 'no-plan') return this.noPlan();
      if (!this.best) return this.ended('-without-plan');
    }
    return this.ended('');
  }

  private constructFirst(): void {
    const tables = tablesOf(this.ground);
    for (const recipe of RECIPES) {
      if (this.shouldStop()) return;
      const state = construct(tables, recipe);
      if (!state) continue;
      const judged = judgeDecisions(this.campus, decisionsOf(state), this.ground.charges);
      if (judged.objections.length === 0) this.keepBetter(judged.incumbent);
    }
  }

  /** Takes decisions that the solver calls feasible. */
  private offer(decisions: Decisions): boolean {
    return this.keepBetter(verifiedIncumbent(this.campus, decisions, this.ground.charges));
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
    if (atBest) {
      this.results.push(tierResult(tier, value, 0));
      return 'solved';
    }
    if (this.shouldStop()) {
      if (value !== undefined) this.results.push(tierResult(tier, value, null));
      return 'solved';
    }
    const relaxed = this.best ? this.improveFirst(place, tier) : null;
    const improved = this.best?.values[place];
    if (improved !== undefined && tierResult(tier, improved, relaxed).proven) {
      this.results.push(tierResult(tier, improved, relaxed));
      return 'solved';
    }
    const outcome = this.runSolver(place, tier);
    if (outcome.ended === 'infeasible') return this.infeasible(tier);
    if (outcome.decisions) this.offer(outcome.decisions);
    this.noteStop(place, outcome);
    const reached = this.best?.values[place];
    const bound = tighter(tier, this.boundOf(tier, outcome), relaxed);
    if (reached !== undefined) this.results.push(tierResult(tier, reached, bound));
    return 'solved';
  }

  /** Bounds a tier by its relaxation and re-solves parts of the plan until the bound or its time is reached. */
  private improveFirst(place: number, tier: Tier): number | null {
    const { settings, around } = this.run;
    const held = this.heldBefore(place);
    const common = { ground: this.ground, solver: this.solver, tier: tier.name, held, seed: settings.seed };
    const shouldStop = () => this.shouldStop();
    const budget = improvementBudget({ place, tiers: this.tiers, settings, elapsed: around.elapsed() });
    const until = around.elapsed() + budget.seconds;
    const bound =
      place > benefitPlace(this.tiers)
        ? null
        : relaxationBound({ ...common, shouldStop, limits: secondsOnly(budget.seconds) });
    if (bound === 'infeasible') throw contradiction(tier);
    const value = () => this.best?.values[place] ?? 0;
    improve({
      ...common,
      random: seededRandom(settings.seed * 1000 + place),
      best: () => this.best?.plan.decisions ?? NOTHING,
      take: (decisions) => {
        const better = this.offer(decisions);
        this.report(place, tier, bound);
        return better;
      },
      done: () => tierResult(tier, value(), bound).proven || closeEnough(tier, value(), bound, settings.gap),
      shouldStop,
      secondsLeft: () => until - around.elapsed(),
      ...(budget.rounds === undefined ? {} : { rounds: budget.rounds }),
    });
    return bound;
  }

  private report(place: number, tier: Tier, bound: number | null): void {
    const objective = this.best?.values[place] ?? null;
    const { gap, bound: shown } = tierResult(tier, objective ?? 0, bound);
    this.run.around.onProgress({
      tier: tier.name,
      objective,
      bound: shown,
      gap: objective === null ? null : gap,
    });
  }

  /** Only the first tier may find that there is no plan; later ones have one in hand. */
  private infeasible(tier: Tier): 'no-plan' {
    if (!this.best) return 'no-plan';
    throw contradiction(tier);
  }

  private boundOf(tier: Tier, outcome: TierOutcome): number | null {
    return outcome.bound ?? (tier.sense === 'min' ? 0 : null);
  }

  private noteStop(place: number, outcome: TierOutcome): void {
    if (!outcome.reason || place > benefitPlace(this.tiers)) return;
    this.stopped = outcome.reason === 'interrupted' ? this.stopReason() : outcome.reason;
  }

  private runSolver(place: number, tier: Tier): TierOutcome {
    const { settings, around } = this.run;
    let lastBound: number | null = null;
    const report = () => this.report(place, tier, lastBound);
    report();
    return solveTier({
      ground: this.ground,
      solver: this.solver,
      tier: tier.name,
      held: this.heldBefore(place),
      limits: tierBudget({ place, tiers: this.tiers, settings, elapsed: around.elapsed() }),
      seed: settings.seed,
      ...(this.best ? { start: this.best.plan.decisions } : {}),
      shouldStop: () => this.shouldStop(),
      onBound: (bound) => {
        lastBound = bound;
        report();
      },
      onDecisions: (decisions) => {
        this.offer(decisions);
        report();
      },
    });
  }

  private heldBefore(place: number): Map<string, number> {
    const values = this.best?.values ?? [];
    return new Map(this.tiers.slice(0, place).map((t, i) => [t.name, values[i] ?? 0]));
  }

  private shouldStop(): boolean {
    const { seconds } = this.run.settings;
    return this.run.around.shouldStop() || (seconds !== undefined && this.run.around.elapsed() >= seconds);
  }

  private stopReason(): 'time' | 'cancelled' {
    return this.run.around.shouldStop() ? 'cancelled' : 'time';
  }

  private noPlan(): SolveResult {
    const conflict = conflictSet(this.campus, this.solver, this.run);
    return { report: { ending: 'no-plan', tiers: [], conflict } };
  }

  private ended(suffix: '' | '-without-plan'): SolveResult {
    const upToBenefit = this.results.slice(0, benefitPlace(this.tiers) + 1);
    const proven = suffix === '' && upToBenefit.every((t) => t.proven);
    const reason = this.stopped ?? this.stopReason();
    const how = reason === 'time' ? 'time-limit' : reason === 'work' ? 'work-limit' : 'cancelled';
    const ending: Ending = proven ? 'proven' : `${how}${suffix}`;
    return {
      report: { ending, tiers: this.results, conflict: [] },
      ...(this.best ? { plan: this.best.plan } : {}),
    };
  }
}

const NOTHING: Decisions = { placements: [], hires: [], workDays: [], purchases: [] };

function contradiction(tier: Tier): Error {
  return new Error(`the solver calls ${tier.name} infeasible while a verified plan is in hand`);
}

/** The better of two bounds. */
function tighter(tier: Tier, a: number | null, b: number | null): number | null {
  if (a === null || b === null) return a ?? b;
  return tier.sense === 'min' ? Math.max(a, b) : Math.min(a, b);
}

function closeEnough(tier: Tier, value: number, bound: number | null, gap: number | undefined): boolean {
  if (gap === undefined || bound === null || tier.name !== 'benefit') return false;
  return Math.abs(value - bound) <= gap * Math.max(1, Math.abs(value));
}

function secondsOnly(seconds: number) {
  return Number.isFinite(seconds) ? { seconds: Math.max(0.5, seconds) } : {};
}
