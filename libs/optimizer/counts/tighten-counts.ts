import type { Model } from '#mip/model.js';
import type { OpenRelaxation } from '#mip/solver.js';
import { groupBy } from '#units/group-by.js';
import type { CountColumn, CountLimits } from './count-columns.js';

/** How far above a whole number a relaxation may say a count lies and still mean that number. */
const DOUBT = 1e-5;

export interface Tightening {
  readonly counts: readonly CountColumn[];
  readonly model: Model;
  /** Seconds of one solve at the most. */
  readonly patience: number;
  readonly done: () => boolean;
}

/**
 * The most that each running count can come to in any plan that the relaxation admits, rounded down to
 * a whole number (bound tightening by optimization, with rounding as by Chvatal 1973). Counts of later
 * years are asked first, since those before them are no larger.
 *
 * @param lp changes its objective only; its bounds are narrowed to what is found
 * @returns `impossible` where the relaxation admits no plan at all
 */
export function tightenCounts(lp: OpenRelaxation, of: Tightening): CountLimits | 'impossible' {
  const limits = new Map<string, number>();
  const costs = new Float64Array(of.model.variables.length);
  // People come first: their fractions are what more sites would be built with.
  for (const series of groupBy(of.counts, (count) => count.series).values()) {
    let later = Infinity;
    for (const count of [...series].reverse()) {
      if (of.done()) return limits;
      const most = later === 0 ? 0 : mostOf(lp, count, { ...of, costs });
      if (most === 'impossible') return most;
      later = Math.min(later, most);
      if (later === Infinity) continue;
      limits.set(count.key, later);
      lp.setColumn(count.variable.column, 0, later);
    }
  }
  return limits;
}

function mostOf(
  lp: OpenRelaxation,
  { variable: { column } }: CountColumn,
  of: Tightening & { readonly costs: Float64Array },
): number | 'impossible' {
  const sign = of.model.sense === 'maximize' ? 1 : -1;
  of.costs[column] = sign;
  lp.setObjective(of.costs);
  of.costs[column] = 0;
  const outcome = lp.solve(of.patience);
  if (outcome.kind === 'infeasible') return 'impossible';
  return outcome.kind === 'optimal' ? Math.floor(sign * outcome.objective + DOUBT) : Infinity;
}
