/** When a solve has to stop. Whichever limit comes first ends it. */
export interface SolveLimits {
  /**
   * Wall time in seconds, more than 0. What is solved here has one, at most `longestSolveSeconds`; null:
   * a plan that came in by a bundle states none.
   */
  readonly seconds: number | null;
  /** Units of work (moves, simplex iterations, nodes) for a repeatable run; null: no such limit. */
  readonly work: number | null;
  /** Relative gap at which to stop, 0 to 1; null: go on until proven. */
  readonly gap: number | null;
}

/** Four hours. The queue's expiry stands well above it, so a live solve is never handed out twice. */
export const longestSolveSeconds = 4 * 60 * 60;
