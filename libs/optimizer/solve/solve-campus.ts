import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { Ending, SolveReport, TierResult } from '#domain/tier.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Solver } from '#mip/solver.js';
import type { Ground } from '../columns/add-columns.js';
import { possibleLifecycles } from '../columns/lifecycles.js';
import { benefitPerCareHour, construct, lightestCare } from '../construct/construct.js';
import { decisionsOf } from '../search/state.js';
import { tablesOf } from '../search/tables.js';
import { benefitPlace, tiersOf, type Tier } from '../tiers/tier-list.js';
import { compareTiers } from '../tiers/tier-values.js';
import { tierBudget } from './budget.js';
import { conflictSet } from './conflict-set.js';
import { judgeDecisions, verifiedIncumbent, type Incumbent } from './incumbent.js';
import type { SolveSettings, SolveSurroundings } from './settings.js';
import { solveTier, type TierOutcome } from './solve-tier.js';
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
    for (const score of [lightestCare, benefitPerCareHour]) {
      if (this.shouldStop()) return;
      const state = construct(tables, score);
      if (!state) continue;
      const judged = judgeDecisions(this.campus, decisionsOf(state), this.ground.charges);
      if (judged.objections.length === 0) this.keepBetter(judged.incumbent);
    }
  }

  /** Takes decisions that the solver calls feasible. */
  private offer(decisions: Decisions): void {
    this.keepBetter(verifiedIncumbent(this.campus, decisions, this.ground.charges));
  }

  private keepBetter(found: Incumbent): void {
    if (this.best && compareTiers(this.campus, found.values, this.best.values) >= 0) return;
    this.best = found;
    this.run.around.onPlan(found.plan, found.values);
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
    const outcome = this.runSolver(place, tier);
    if (outcome.ended === 'infeasible') return this.infeasible(tier);
    if (outcome.decisions) this.offer(outcome.decisions);
    this.noteStop(place, outcome);
    const reached = this.best?.values[place];
    if (reached !== undefined) this.results.push(tierResult(tier, reached, this.boundOf(tier, outcome)));
    return 'solved';
  }

  /** Only the first tier may find that there is no plan; later ones have one in hand. */
  private infeasible(tier: Tier): 'no-plan' {
    if (!this.best) return 'no-plan';
    throw new Error(`the solver calls ${tier.name} infeasible while a verified plan is in hand`);
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
    const report = () => {
      const objective = this.best?.values[place] ?? null;
      const { gap, bound } = tierResult(tier, objective ?? 0, lastBound);
      around.onProgress({ tier: tier.name, objective, bound, gap: objective === null ? null : gap });
    };
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
