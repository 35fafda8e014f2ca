export interface Learning {
  /** How many builds the crew counts, this one included; 1 for its first. Forgetting may leave a fraction. */
  readonly builds: number;
  /** Share of hours left at each doubling, above 0 to 1. */
  readonly rate: number;
  /** Least share of the first build's hours, 0 to 1. */
  readonly floor: number;
}

/**
 * Share of the first build's hours that build n takes.
 *
 *     h(n) / h(1) = max(floor, n ^ log2(rate))
 *
 * Source: the learning curve of T. P. Wright, J. Aeronautical Sciences 3 (1936). Staff-led tasks only; a
 * request for people leaves it out, which is the cautious case.
 */
export function learningShare({ builds, rate, floor }: Learning): number {
  return Math.max(floor, builds ** Math.log2(rate));
}

/** Builds that still count after the lead has left: max(1, kept x builds). */
export function buildsAfterTurnover(builds: number, kept: number): number {
  return Math.max(1, kept * builds);
}
