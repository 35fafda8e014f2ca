import type { Decisions } from '#domain/plan.js';
import type { Model } from '#mip/model.js';
import type { SolveLimits, SolveOutcome, Solver } from '#mip/solver.js';
import type { Lifecycle } from '#rules/columns.js';
import type { Ground } from '../columns/add-columns.js';
import type { Counted } from '../counts/count-columns.js';
import { planModel, type HeldTiers, type PlanModel } from '../model/plan-model.js';
import { readDecisions } from '../model/read-decisions.js';
import { startPoint } from './start-point.js';

export interface TierSolve {
  readonly ground: Ground;
  readonly solver: Solver;
  readonly tier: string;
  readonly held: HeldTiers;
  readonly limits: SolveLimits;
  readonly seed: number;
  readonly start?: Decisions;
  readonly shouldStop: () => boolean;
  readonly onBound: (bound: number) => void;
  readonly onDecisions: (decisions: Decisions) => void;
  /** Leaves points out. Left out: all points that the ground admits. */
  readonly narrow?: (made: PlanModel) => Model;
  /** Decisions found elsewhere since the last call, to be taken up; `undefined`: none. */
  readonly newDecisions?: () => Decisions | undefined;
}

/** How the solve of one tier ended, in words of the landscape program. */
export interface TierOutcome {
  readonly ended: SolveOutcome['kind'];
  readonly reason?: 'time' | 'work' | 'interrupted';
  readonly decisions?: Decisions;
  readonly bound: number | null;
}

/** Solves one tier with the tiers before it held. */
export function solveTier(of: TierSolve): TierOutcome {
  const made = planModel(of.ground, of.tier, of.held);
  const { columns } = made;
  const outcome = of.solver.solve(of.narrow?.(made) ?? made.model, {
    limits: of.limits,
    seed: of.seed,
    ...(of.start ? { start: startPoint(columns, of.start) } : {}),
    hooks: {
      shouldStop: of.shouldStop,
      onBound: (bound) => Math.abs(bound) < 1e20 && of.onBound(bound),
      onPoint: (values) => of.onDecisions(readDecisions(columns, values)),
      ...(of.newDecisions && {
        newPoint: () => {
          const found = of.newDecisions?.();
          return found && startPoint(columns, found);
        },
      }),
    },
  });
  switch (outcome.kind) {
    case 'infeasible':
      return { ended: 'infeasible', bound: null };
    case 'stopped-without-point':
      return { ended: outcome.kind, reason: outcome.reason, bound: finite(outcome.bound) };
    case 'stopped':
    case 'optimal':
      return {
        ended: outcome.kind,
        ...(outcome.kind === 'stopped' ? { reason: outcome.reason } : {}),
        decisions: readDecisions(columns, outcome.values),
        bound: finite(outcome.bound),
      };
  }
}

function finite(bound: number): number | null {
  return Number.isFinite(bound) ? bound : null;
}

/** A relaxation at its optimum. */
export interface Relaxation {
  readonly bound: number;
  /** How far below the bound every plan that takes up a life is, at least; at or above 0. */
  readonly losesAtLeast: ReadonlyMap<Lifecycle, number>;
  /** What taking up a life costs the relaxation at its best point, at or above 0: its reduced cost. */
  readonly costOf: ReadonlyMap<Lifecycle, number>;
  /** Share of a life that the relaxation takes. */
  readonly valueOf: ReadonlyMap<Lifecycle, number>;
  /** Counts whose limits were found on the way. Left out: none. */
  readonly counted?: Counted;
}

type Question = Pick<
  TierSolve,
  'ground' | 'solver' | 'tier' | 'held' | 'seed' | 'shouldStop' | 'limits'
>;

/** Solves a tier with fractions of sites and people allowed; `null` where it was stopped. */
export function relaxTier(of: Question): Relaxation | null | 'infeasible' {
  const { model, columns } = planModel(of.ground, of.tier, of.held);
  const outcome = of.solver.solve(model, {
    limits: of.limits,
    seed: of.seed,
    relaxed: true,
    hooks: { shouldStop: of.shouldStop },
  });
  if (outcome.kind === 'infeasible') return 'infeasible';
  if (outcome.kind !== 'optimal') return null;
  const sign = model.sense === 'maximize' ? -1 : 1;
  const reduced = outcome.duals?.columns ?? new Float64Array(model.variables.length);
  const byLife = (numbers: ArrayLike<number>, factor: number) =>
    new Map(
      of.ground.lifecycles.map((l, i) => {
        const column = columns.lifecycles[i]?.variable.column ?? -1;
        return [l, Math.max(0, factor * (numbers[column] ?? 0))] as const;
      }),
    );
  const costOf = byLife(reduced, sign);
  return {
    bound: outcome.objective,
    losesAtLeast: costOf,
    costOf,
    valueOf: byLife(outcome.values, 1),
  };
}

/** A bound of one tier by its relaxation: no plan that holds the earlier tiers can be better. */
export function relaxationBound(of: Question): number | null | 'infeasible' {
  const relaxed = relaxTier(of);
  return relaxed === null || relaxed === 'infeasible' ? relaxed : relaxed.bound;
}
