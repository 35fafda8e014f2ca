import type { Ending, TierResult } from '#domain/tier.js';
import type { Figure, Reason } from './reason.js';

export type { Figure, Reason } from './reason.js';

/**
 * What a reader of one plan wants to see, worked out from the campus and the verified plan.
 * Plain JSON: labels are ready to print, numbers carry their unit in the name. The page and the
 * administration brief show the same overview.
 */
export interface PlanOverview {
  readonly campus: {
    readonly id: string;
    readonly name: string;
    readonly program: string;
    readonly dataDate: string;
  };
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
  /** Gifts and grants of which the plan leaves something unspent, in order of year. */
  readonly lapses: readonly LapseRow[];
  readonly paybacks: readonly PaybackRow[];
  readonly hires: readonly HireRow[];
  readonly limits: readonly LimitRow[];
  readonly promises: readonly PromiseRow[];
  readonly unknowns: readonly UnknownRow[];
  readonly cautions: readonly string[];
  /** How the numbers are worked out, each kind once. */
  readonly sources: readonly NumberSource[];
  /** What else could be decided, each worked out to the end: the plan itself comes first. */
  readonly alternatives: readonly Alternative[];
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
  /** Other candidates that could be prepared in the year, with which its sites are compared. */
  readonly comparedWith: number;
  /** Those that keep the firmest promise first. */
  readonly sites: readonly NextSite[];
}

export interface NextSite {
  readonly site: string;
  /** Its second half, and what is made of it later, in words. Left out: nothing follows. */
  readonly later?: string;
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

/** One fiscal year of the horizon. */
export interface YearRow {
  readonly year: string;
  readonly planting: string;
  readonly sites: readonly YearSite[];
  /** Candidates that works bar from being prepared in this year. */
  readonly blocked: readonly string[];
  /** Whether the yearly promise is kept in this year; `null` where none covers it. */
  readonly promiseKept: boolean | null;
  /** Sites that the promise wants in this year, or that the plan prepares, whichever is more. */
  readonly sitesWanted: number;
  /** Candidates that could still be prepared in this year, those that the plan prepares included. */
  readonly sitesLeft: number;
  readonly hires: readonly string[];
}

export interface YearSite {
  readonly site: string;
  readonly name: string;
  readonly zone: string;
  readonly buildType: string;
  readonly areaSqFt: number;
  readonly cost: CostBand;
  /** Effective hours of care and harvest in its second summer (or second main care season). */
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
  /** Hours of care and harvest by age of site; exact, so that they add up to what is planned. */
  readonly careByAge: {
    readonly year1: number;
    readonly year2: number;
    readonly year3: number;
    readonly mature: number;
  };
  readonly buildHours: number;
  readonly superviseHours: number;
  /**
   * Effective hours of those already there, work days held included, that this season's building,
   * leading and caring can use: who may do none of it is not counted.
   */
  readonly supplyNow: number;
  /** The same with the positions that the plan proposes. */
  readonly supplyProposed: number;
  /** Hours that would go undone without the positions that the plan proposes. */
  readonly shortNow: number;
  readonly unserved: number;
  readonly afterHorizon: boolean;
}

/** One fund in one year, exact to the cent: opening + received + paidBack - spent - lapsed = closing. */
export interface FundRow {
  readonly fund: string;
  readonly name: string;
  readonly year: string;
  readonly opening: number;
  readonly received: number;
  /** What grants paid back to the fund; below 0: what the grant paid back to others. */
  readonly paidBack: number;
  readonly spent: number;
  readonly lapsed: number;
  readonly closing: number;
  /** `closing` never falls below it; 0 where the fund has none. */
  readonly floor: number;
}

/** Dollars of one year by cost line, in dollars of the year, exact to the cent. */
export interface MoneyRow {
  readonly year: string;
  readonly build: number;
  readonly care: number;
  readonly positions: number;
  readonly compost: number;
  readonly standing: number;
  readonly received: number;
  /** Left unspent past its last year. */
  readonly lapsed: number;
  /** Carried into the next year. */
  readonly closing: number;
}

/** Restricted money that this plan does not use up. */
export interface LapseRow {
  readonly fund: string;
  readonly name: string;
  readonly year: string;
  readonly dollars: number;
  readonly sentence: string;
}

/** Money that a fund fronts for a site, and that a reimbursable grant pays back to it. */
export interface PaybackRow {
  readonly grant: string;
  readonly name: string;
  /** Fiscal year of the payback. */
  readonly year: string;
  readonly dollars: number;
  readonly sentence: string;
}

/** Compost of one season in cubic yards: of both grades, and by grade where a campus has both. */
export interface CompostRow {
  readonly label: string;
  readonly season: string;
  readonly year: string;
  readonly made: number;
  readonly bought: number;
  readonly builds: number;
  readonly topDress: number;
  readonly givenAway: number;
  readonly stock: number;
  /** `null`: all of it is certified. */
  readonly grades: { readonly certified: GradeRow; readonly other: GradeRow } | null;
}

/** Compost of one grade: stock before + made + bought = used + given away + stock. */
export interface GradeRow {
  readonly made: number;
  readonly bought: number;
  readonly used: number;
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
  /** Each, for a full year (a season's hire: for its season), in dollars of the start year. */
  readonly annualDollars: number;
  /** `one-season`: hired again each time. */
  readonly term: 'recurring' | 'one-season';
}

/** The first time that one resource of this plan runs short without what is only proposed. */
export interface LimitRow {
  /** `summer hours` and so on for each season of the campus, `money`, `compost`, `sites`. */
  readonly resource: 'summer hours' | 'money' | 'compost' | 'sites' | (string & {});
  /** `null`: it does not run short within the plan. */
  readonly year: string | null;
  readonly label: string | null;
  readonly shortBy: number | null;
  readonly unit: string;
  /** The other numbers of the sentence. */
  readonly figures: readonly Figure[];
  /** When and by how much it runs short; where it does not, its tightest point. */
  readonly sentence: string;
}

export interface PromiseRow {
  readonly id: string;
  readonly name: string;
  readonly strength: 'binding' | 'intended' | 'aspiration';
  readonly status: 'kept' | 'missed' | 'partly kept';
  /** Last year up to which it is kept without a break; `null` where it is not a yearly promise, or missed at once. */
  readonly keptUntil: string | null;
  /** Fiscal years, for a promise that is tested year by year. */
  readonly missedYears: readonly string[];
  readonly sentence: string;
}

/** One course of action, with what it builds, asks for and gives up. */
export interface Alternative {
  readonly kind: 'this-plan' | 'stop-before-hiring' | 'skip-next-year' | 'build-no-more';
  readonly title: string;
  readonly summary: string;
  readonly sitesBuilt: number;
  readonly areaBuiltSqFt: number;
  /** In dollars of each year. */
  readonly capitalDollars: number;
  /** Pay of proposed positions over all years, in dollars of each year. */
  readonly positionDollars: number;
  /** Care in the main care season of the last year, in effective hours. */
  readonly busySeasonHours: number;
  readonly busySeason: string;
  /** Promises that it breaks or keeps only in part, and money that it lets lapse. */
  readonly givenUp: readonly string[];
}

/** One kind of number: its formula in words, and where its coefficients come from. */
export interface NumberSource {
  readonly number: string;
  readonly how: string;
  readonly source: string;
}

/** Something to find out: never shown as a zero. */
export interface UnknownRow {
  /** Empty where it is of the whole campus. */
  readonly site: string;
  readonly name: string;
  readonly what: string;
  readonly clearedBy: string;
  readonly consequence: string;
}
