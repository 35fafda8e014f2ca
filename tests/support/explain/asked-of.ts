import type { Campus } from '#domain/campus.js';
import type { Asked } from '#explain/questions/common/asked.js';
import type { Solver } from '#mip/solver.js';
import { solveCampus } from '#optimizer/solve/solve-campus.js';
import { hereResolver } from './here-resolver.js';

/** A small campus solved until proven, to be asked about with re-solves that are proven too. */
export function askedOf(campus: Campus, solver: Solver): Asked {
  const { plan, report } = solveCampus(campus, solver, {
    settings: { seed: 1 },
    around: {
      elapsed: () => 0,
      shouldStop: () => false,
      onProgress: () => undefined,
      onPlan: () => undefined,
      onNoPlan: () => undefined,
    },
  });
  if (!plan) throw new Error(`no plan: ${report.ending}`);
  return {
    campus,
    plan,
    tiers: report.tiers,
    resolver: hereResolver(solver),
    seed: 1,
    effort: { kind: 'proven' },
  };
}
