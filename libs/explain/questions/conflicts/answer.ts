import type { ConflictMember } from '#domain/tier.js';
import type { Made } from '../common/asked.js';
import type { PlanMeasures } from '../common/plan-measures.js';

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
  /** The amount as a share of the whole promise, or of all that the plan uses. */
  readonly share: number;
  readonly sentence: string;
}

/** A smallest set of members to let go, with a verified plan that then exists. */
export interface RepairRow {
  readonly lets: readonly ConflictMember[];
  /** In the plan found; a better one might give up less. `null` where no plan was worked out in time. */
  readonly prices: readonly RepairPrice[] | null;
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
