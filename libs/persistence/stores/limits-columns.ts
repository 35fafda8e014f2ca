import type { SolveLimits } from '#planning/solve-limits.js';

/** The three columns that `plan` and `solve_request` keep the limits in. */
export interface LimitsColumns {
  readonly limitSeconds: number | null;
  readonly limitWork: number | null;
  readonly limitGap: number | null;
}

export function limitsColumns({ seconds, work, gap }: SolveLimits): LimitsColumns {
  return { limitSeconds: seconds, limitWork: work, limitGap: gap };
}

export function limitsOf({ limitSeconds, limitWork, limitGap }: LimitsColumns): SolveLimits {
  return { seconds: limitSeconds, work: limitWork, gap: limitGap };
}
