import type { Campus } from '#domain/campus.js';
import type { Asked } from '#explain/questions/common/asked.js';
import type { Solver } from '#mip/solver.js';
import { solveHere } from '../solve-here.js';
import { hereResolver } from './here-resolver.js';

/** A small campus solved until proven, to be asked about with re-solves that are proven too. */
export function askedOf(campus: Campus, solver: Solver): Asked {
  const { plan, report } = solveHere(campus, solver);
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
