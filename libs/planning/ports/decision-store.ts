/** What a person decided about a site of a plan, and why. A record: never changed afterwards. */
export interface Decision extends NewDecision {
  readonly decidedAt: Date;
}

export interface NewDecision {
  readonly id: string;
  readonly campusId: string;
  readonly planId: string;
  readonly site: string;
  /** Fiscal year that the decision is about, such as `FY28`. */
  readonly year: string;
  readonly verdict: 'approved' | 'put off' | 'refused';
  readonly decidedBy: string;
  readonly reason: string;
  /** Who disagreed, and why; empty: nobody on record. */
  readonly dissent: string;
}

/** Keeps decisions beside the plans that they were taken on. */
export interface DecisionStore {
  record(decision: NewDecision): Promise<Decision>;

  /** Newest first. */
  listOf(campusId: string): Promise<readonly Decision[]>;
}
