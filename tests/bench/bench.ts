/** One thing to measure, of one size, against its peers. */
export interface Bench {
  /** What `npm run bench -- NAME` calls it. */
  readonly name: string;
  /** What is measured, and what the peers do otherwise. */
  readonly about: string;
  /** What a size counts: 'corners', 'sites'. */
  readonly sizeUnit: string;
  /** From the smallest, which the tests run once, to the largest. */
  readonly sizes: readonly number[];
  /** The ways to do it; the first is ours, and the others are shown as multiples of its time. */
  readonly contenders: (size: number) => readonly Contender[];
}

export interface Contender {
  readonly name: string;
  /** Does the work once. What it returns is only there so that the work cannot be left out. */
  readonly run: () => unknown;
}

/** What was measured for one contender at one size. */
export interface Timing {
  readonly contender: string;
  /** Median milliseconds of one run. */
  readonly medianMs: number;
  /** Median of this contender over the median of the first. */
  readonly ratio: number;
}
