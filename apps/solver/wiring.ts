import { unwired } from '../adapters/unwired.js';
import type { SolverAdapters } from './run-solver.js';

/** The adapters of a solver worker. */
export function solverAdapters(): SolverAdapters {
  return {
    solving: { solve: unwired('solving') },
    checker: { check: unwired('the plan checker') },
    overview: { of: unwired('the overview of a plan') },
  };
}
