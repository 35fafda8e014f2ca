import type { ConflictMember } from '#domain/tier.js';
import type { Made } from '../common/asked.js';
import type { PlanMeasures } from '../common/plan-measures.js';
import type { FileChange } from './changes.js';

export interface ConflictSetRow {
  readonly members: readonly ConflictMember[];
  /** Ids of members without which a verified plan was found. */
  readonly provenNecessary: readonly string[];
  readonly sentence: string;
}

/** What is given up of one promise, or asked beyond one limit, in a repair. */
export interface RepairPrice {
  readonly id: string;
  readonly name: string;
  readonly amount: number;
  readonly unit: string;
  /** The whole promise, or all that the plan uses, in the same unit. */
  readonly whole: number;
  /** The amount as a share of the whole. */
  readonly share: number;
}

/** A smallest set of members to let go, with a verified plan that then exists. */
export interface RepairRow {
  readonly lets: readonly ConflictMember[];
  /** In the plan found; a better one might give up less. `null` where no plan was worked out in time. */
  readonly prices: readonly RepairPrice[] | null;
  /** What to change in the campus file, so that a plan solved for it passes every check. */
  readonly changes: readonly FileChange[] | null;
  readonly plan: PlanMeasures | null;
  readonly sentence: string;
}

export interface ConflictsAnswer {
  readonly question: 'conflicts';
  readonly headline: string;
  readonly sets: readonly ConflictSetRow[];
  /** The cheapest first: by the shares given up, added together. */
  readonly repairs: readonly RepairRow[];
  /** All smallest sets and repairs of up to this many members are there. */
  readonly mostRemoved: number;
  readonly complete: boolean;
  readonly made: Made;
}
