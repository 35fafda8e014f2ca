import type { Ending, TierResult } from '#domain/tier.js';

/**
 * What a reader of one plan wants to see, worked out from the campus and the verified plan.
 * Plain JSON: labels are ready to print, numbers carry their unit in the name. The page and the
 * administration brief show the same overview.
 */
export interface PlanOverview {
  readonly campus: { readonly id: string; readonly name: string; readonly program: string; readonly dataDate: string };
  readonly firstYear: string;
  readonly lastYear: string;
  readonly solve: {
    readonly ending: Ending;
    readonly tiers: readonly TierResult[];
    /** One sentence: how near to proven the plan is. */
    readonly sentence: string;
  };
  readonly headline: {
    readonly nextSite: string;
    readonly firstLimit: string;
    readonly promise: string;
  };
  readonly next: NextYear;
  readonly years: readonly YearRow[];
  readonly seasons: readonly SeasonRow[];
  readonly funds: readonly FundRow[];
  readonly money: readonly MoneyRow[];
  readonly compost: readonly CompostRow[];
  readonly hires: readonly HireRow[];
  readonly limits: readonly LimitRow[];
  readonly promises: readonly PromiseRow[];
  readonly unknowns: readonly UnknownRow[];
  readonly cautions: readonly string[];
  readonly totals: {
    readonly sitesBuilt: number;
    readonly candidates: number;
    readonly areaBuiltSqFt: number;
    readonly capitalNominalDollars: number;
  };
}

/** The decision for the first year of the plan. */
export interface NextYear {
  readonly year: string;
  readonly planting: string;
  readonly sites: readonly NextSite[];
}

export interface NextSite {
  readonly site: string;
  readonly name: string;
  readonly zone: string;
  readonly buildType: string;
  readonly areaSqFt: number;
  /** Class 5 estimate in dollars of the year: low, likely, high. */
  readonly cost: CostBand;
  readonly reasons: readonly Reason[];
  readonly against: readonly Reason[];
  /** What must be done or found out before work starts. */
  readonly openGates: readonly UnknownRow[];
}

export interface CostBand {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly dollarsOf: string;
}

/** One sentence with the number it rests on and where that comes from. */
export interface Reason {
  readonly sentence: string;
  readonly value: number | null;
  readonly unit: string;
  readonly source: string;
}

/** One fiscal year of the horizon. */
export interface YearRow {
  readonly year: string;
  readonly planting: string;
  readonly sites: readonly YearSite[];
  /** Candidates that works bar from being prepared in this year. */
  readonly blocked: readonly string[];
  /** Whether the yearly promise is kept in this year; `null` where none covers it. */
  readonly promiseKept: boolean | null;
  readonly hires: readonly string[];
}

export interface YearSite {
  readonly site: string;
  readonly name: string;
  readonly zone: string;
  readonly buildType: string;
  readonly areaSqFt: number;
  readonly cost: CostBand;
  /** Effective hours that its care adds in its second summer (or main care season). */
  readonly busySeasonHours: number;
  /** The care of this year's sites rests on a position that is only proposed. */
  readonly needsProposedPosition: boolean;
  readonly countsTowardsPromise: boolean;
}

/** Labor of one season: what is wanted, and who is there. */
export interface SeasonRow {
  readonly index: number;
  readonly year: string;
  readonly season: string;
  readonly label: string;
  /** Hours of care and harvest by age of site. */
  readonly careByAge: { readonly year1: number; readonly year2: number; readonly year3: number; readonly mature: number };
  readonly buildHours: number;
  readonly superviseHours: number;
  /** Effective hours of those already there, work days held included. */
  readonly supplyNow: number;
  /** With the positions that the plan proposes. */
  readonly supplyProposed: number;
  readonly unserved: number;
  readonly afterHorizon: boolean;
}

export interface FundRow {
  readonly fund: string;
  readonly name: string;
  readonly year: string;
  readonly opening: number;
  readonly received: number;
  readonly spent: number;
  readonly lapsed: number;
  readonly closing: number;
}

/** Dollars of one year by cost line, in dollars of the year. */
export interface MoneyRow {
  readonly year: string;
  readonly build: number;
  readonly care: number;
  readonly positions: number;
  readonly compost: number;
  readonly standing: number;
  readonly received: number;
  readonly closing: number;
}

export interface CompostRow {
  readonly label: string;
  readonly year: string;
  readonly made: number;
  readonly bought: number;
  readonly builds: number;
  readonly topDress: number;
  readonly givenAway: number;
  readonly stock: number;
}

export interface HireRow {
  readonly position: string;
  readonly count: number;
  readonly startsIn: string;
  readonly year: string;
  /** Month by which it must be asked for, for example `November 2032`. */
  readonly askBy: string;
  readonly annualDollars: number;
}

/** The first time that one resource of this plan runs short without what is only proposed. */
export interface LimitRow {
  readonly resource: 'summer hours' | 'other hours' | 'money' | 'compost' | 'sites' | (string & {});
  /** `null`: it does not run short within the plan. */
  readonly year: string | null;
  readonly label: string | null;
  readonly shortBy: number | null;
  readonly unit: string;
  readonly sentence: string;
}

export interface PromiseRow {
  readonly id: string;
  readonly name: string;
  readonly strength: 'binding' | 'intended' | 'aspiration';
  readonly status: 'kept' | 'missed' | 'partly kept';
  /** Last year up to which it is kept without a break; `null` where it is not a yearly promise. */
  readonly keptUntil: string | null;
  readonly missedYears: readonly string[];
  readonly sentence: string;
}

/** Something to find out: never shown as a zero. */
export interface UnknownRow {
  readonly site: string;
  readonly name: string;
  readonly what: string;
  readonly clearedBy: string;
  readonly consequence: string;
}
