import type { Campus } from '#domain/campus.js';
import type { CommitmentTest } from '#domain/commitment.js';
import type { Plan } from '#domain/plan.js';

/** How far a plan is from keeping one promise. */
export interface Shortfall {
  /** 0 where it is kept. Whole, in `unit`. */
  readonly amount: number;
  readonly unit: 'sites' | 'square feet' | 'positions' | 'hundredths of an hour';
  /** The shortfall when nothing at all is done for it; 0 where that cannot be said. */
  readonly whole: number;
  /** Where it is missed: fiscal years, seasons, sites or zones, as a reader names them. */
  readonly where: readonly string[];
}

export type TestOf<K extends CommitmentTest['kind']> = Extract<CommitmentTest, { kind: K }>;

export type Measure<K extends CommitmentTest['kind']> = (
  campus: Campus,
  plan: Plan,
  test: TestOf<K>,
) => Shortfall;
