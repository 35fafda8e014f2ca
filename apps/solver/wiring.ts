import { computedOverview } from '../adapters/computed-overview.js';
import { ruleChecker } from '../adapters/rule-checker.js';
import { threadExplaining } from '../adapters/thread-explaining.js';
import { threadSolving } from '../adapters/thread-solving.js';
import type { SolverAdapters } from './run-solver.js';

/** The adapters of a solver worker. */
export function solverAdapters(): SolverAdapters {
  return {
    solving: threadSolving,
    checker: ruleChecker,
    overview: computedOverview,
    explaining: threadExplaining,
  };
}
