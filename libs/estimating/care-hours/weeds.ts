export interface SetBack {
  readonly age: number;
  /** Part of the year's care that nobody did, 0 to 1. */
  readonly unservedShare: number;
  /** Years of establishment lost per unserved share. */
  readonly yearsPerShare: number;
}

/**
 * Age of a site after a year of neglect, as its care will be: age - phi x unserved share, never below 1.
 * Weeds that seeded make a site as much work as a younger one. Source: planning judgement.
 */
export function ageAfterNeglect({ age, unservedShare, yearsPerShare }: SetBack): number {
  return Math.max(1, age - yearsPerShare * unservedShare);
}
