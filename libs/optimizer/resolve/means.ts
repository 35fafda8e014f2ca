import type { Solver } from '#mip/solver.js';

/** What a re-solve needs beside its order. */
export interface ResolveMeans {
  readonly solver: Solver;
  /** Seconds since the re-solve began. */
  readonly elapsed: () => number;
}
