import type { Cents } from '#units/cents.js';
import type { FiscalYear } from '#units/fiscal-year.js';

/** What dollars are spent on. */
export const COST_LINES = ['build', 'care', 'positions', 'compost', 'standing'] as const;
export type CostLine = (typeof COST_LINES)[number];

/** Price growth that a cost follows. */
export type EscalationKind = 'construction' | 'wages' | 'supplies';

/** Yearly price growth as shares (0.04 is 4 %), counted from the price year. */
export type Escalation = Readonly<Record<EscalationKind, number>>;

/** What a dollar may be spent on. */
export interface Restriction {
  readonly lines: readonly CostLine[];
  /** Sites on which build and care may be paid. `any`: no rule by site. */
  readonly sites: 'any' | readonly string[];
  readonly buildTypes: 'any' | readonly string[];
}

/** Money that arrives in one year with its rule. Fees are already taken off. */
export interface Inflow {
  readonly year: FiscalYear;
  readonly amount: Cents;
  /** Last year in which it may be spent (included). */
  readonly lastYear: FiscalYear;
  readonly restriction: Restriction;
}

/** How a reimbursable grant pays: its inflows say how much, and for spending of which years. */
export interface Reimbursement {
  /** Id of the fund that fronts the money, and that gets it back. */
  readonly frontedBy: string;
  /** Fiscal years from the spending to the payback; 0: in the same year, so that nothing is fronted. */
  readonly lagYears: number;
}

/** A pot of money with rules. A care share is a pot of its own. */
export interface Fund {
  readonly id: string;
  readonly name: string;
  readonly kind:
    | 'capital'
    | 'operating'
    | 'gift'
    | 'student-fee'
    | 'reunion-gift'
    | 'grant'
    | 'endowment-payout'
    | 'reserve';
  readonly status: 'received' | 'pledged' | 'hoped-for';
  /** Hoped-for money is shown and not planned on unless the file says so. */
  readonly counted: boolean;
  /** Closing balance never falls below this. */
  readonly floor: Cents;
  /** Most that it pays for each dollar of other money on the same site. Left out: not a matching grant. */
  readonly matchRatio?: number;
  /** It pays back what another fund has spent. Left out: its own money pays. */
  readonly reimbursement?: Reimbursement;
  /** Id of the fund whose care share it is: they arrive together. Left out: it is none. */
  readonly careShareOf?: string;
  readonly inflows: readonly Inflow[];
}

/** A cost that is there every year whether or not anything is built. */
export interface StandingCost {
  readonly id: string;
  readonly name: string;
  /** A year's cost in the price year. */
  readonly annual: Cents;
  readonly escalation: EscalationKind;
}
