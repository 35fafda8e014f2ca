/** How fast a dead worker is noticed. All in milliseconds. */
export interface LeaseTiming {
  /** A worker renews its lease this often. */
  readonly renewEvery: number;
  /** A lease not renewed for this long is lost. */
  readonly lapsesAfter: number;
  /** Every api and worker looks for lost leases this often. */
  readonly sweepEvery: number;
}

/** Worst case from a worker's death to its request being free again: 12 s + 2 s, under 15 s. */
export const defaultLeaseTiming: LeaseTiming = {
  renewEvery: 3_000,
  lapsesAfter: 12_000,
  sweepEvery: 2_000,
};

/** A request whose worker died this many times is failed: it would take down the next one too. */
export const mostAttempts = 3;
