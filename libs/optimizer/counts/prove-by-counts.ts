import type { Model } from '#mip/model.js';
import type { Solver } from '#mip/solver.js';
import { withOpen } from '#mip/with-open.js';
import { planModel, type HeldTiers, type PlanModel } from '../model/plan-model.js';
import type { Ground } from '../columns/add-columns.js';
import { branchOnCounts, type TreeOutcome } from './branch-on-counts.js';
import { NOTHING_COUNTED_OUT, type CountLimits } from './count-columns.js';
import { tightenCounts } from './tighten-counts.js';

export interface CountProof {
  readonly ground: Ground;
  readonly solver: Solver;
  readonly tier: string;
  readonly held: HeldTiers;
  readonly seed: number;
  /** What the tier is worth in the best plan. */
  readonly worth: () => number;
  /** Nodes of the tree at the most. */
  readonly nodes: number;
  /** Told each time it falls, with what the tree leaves at that moment. */
  readonly onBound: (bound: number, outcome: () => CountProofOutcome) => void;
  readonly onWhole: (values: Float64Array, model: PlanModel) => void;
  readonly shouldStop: () => boolean;
  readonly secondsLeft: () => number;
}

/** What a tree leaves, with what was known before it. */
export interface CountProofOutcome extends TreeOutcome {
  /** The most that running counts come to in any better plan. */
  readonly limits: CountLimits;
}

/** Share of the time that may go into limits of counts. */
const LIMITS_SHARE = 0.3;

/** Seconds of one solve at the most: one that takes longer has lost its way. */
const PATIENCE = 5;

/**
 * Bounds a tier by counts: first the most that each may come to in a better plan, then by branching on
 * them. `nothing-better`: the best plan is proven.
 */
export function proveByCounts(of: CountProof): CountProofOutcome | 'nothing-better' {
  const limits = limitsOf(of);
  if (limits === 'impossible') return 'nothing-better';
  const made = planModel({ ...of.ground, counted: { kinds: 'all', limits } }, of.tier, of.held);
  const outcome = withOpen(of.solver, { ...of, model: made.model, changing: 'bounds' }, (lp) =>
    branchOnCounts(lp, {
      model: made.model,
      counts: made.counts,
      lives: made.columns.lifecycles.map(({ variable }) => variable.column),
      patience: PATIENCE,
      worth: of.worth,
      done: () => of.shouldStop() || of.secondsLeft() <= 0,
      nodes: of.nodes,
      onBound: (bound, left) => of.onBound(bound, () => ({ ...left(), limits })),
      onWhole: (values) => of.onWhole(values, made),
    }),
  );
  return outcome === 'nothing-better' ? outcome : { ...outcome, limits };
}

function limitsOf(of: CountProof): CountLimits | 'impossible' {
  const { model, counts } = planModel(
    { ...of.ground, counted: NOTHING_COUNTED_OUT },
    of.tier,
    of.held,
  );
  const left = of.secondsLeft();
  const until = Number.isFinite(left) ? left * (1 - LIMITS_SHARE) : 0;
  return withOpen(
    of.solver,
    { ...of, model: betterThan(model, of.worth()), changing: 'objective' },
    (lp) =>
      tightenCounts(lp, {
        model,
        counts,
        patience: PATIENCE,
        done: () => of.shouldStop() || of.secondsLeft() <= until,
      }),
  );
}

/** The model with one more row: only points that are worth as much. */
function betterThan(model: Model, worth: number): Model {
  const columns = [...model.objective.keys()].filter((j) => model.objective[j] !== 0);
  const { starts, columns: at, values } = model.rows;
  const most = model.sense === 'maximize';
  return {
    ...model,
    rowLabels: [...model.rowLabels, 'better'],
    rowLower: Float64Array.from([...model.rowLower, most ? worth : -Infinity]),
    rowUpper: Float64Array.from([...model.rowUpper, most ? Infinity : worth]),
    rows: {
      starts: Int32Array.from([...starts, at.length + columns.length]),
      columns: Int32Array.from([...at, ...columns]),
      values: Float64Array.from([...values, ...columns.map((j) => model.objective[j] ?? 0)]),
    },
  };
}
