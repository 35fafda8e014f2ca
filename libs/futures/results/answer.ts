import type { OddsSource } from '../sampling/odds.js';
import type { SampledShare, Spread } from './share.js';

/** A season with care wanted, hours there for it, and care left undone. */
export interface SeasonCare {
  readonly label: string;
  readonly year: number;
  readonly season: string;
  readonly wanted: Spread;
  readonly there: Spread;
  readonly unserved: Spread;
  /** Futures in which an hour or more of care is left undone. */
  readonly short: SampledShare;
}

/** How a promise fares. */
export interface PromiseShare {
  readonly id: string;
  readonly name: string;
  readonly strength: string;
  readonly public: boolean;
  /** First year in which the plan itself breaks it; `null` where it keeps it. */
  readonly planBreaks: number | null;
  /** Futures in which it is kept in every year up to this one. */
  readonly keptThrough: readonly ({ readonly year: number } & SampledShare)[];
}

/** How a gift fares: it may not come, and what comes may lapse. */
export interface GiftShare {
  readonly id: string;
  readonly name: string;
  readonly status: string;
  readonly dollars: number;
  readonly comes: SampledShare;
  /** Futures in which it comes and $100 or more of it is never spent. */
  readonly lost: SampledShare;
  /** What lapses in the plan itself. */
  readonly lostInPlanDollars: number;
}

/** A first season that is more likely than not short of care. */
export interface FirstShort {
  readonly label: string;
  readonly year: number;
  readonly short: SampledShare;
  readonly unserved: Spread;
}

/** One way of meeting the futures, with what came of it. */
export interface FuturesResult {
  readonly futures: number;
  readonly asked: number;
  /** Half of the widest 95 % interval that a share of so many futures may have, in percentage points, rounded up. */
  readonly mostErrorPoints: number;
  /** What is done about what is lacking, in a sentence. */
  readonly recourse: string;
  readonly seasons: readonly SeasonCare[];
  readonly firstShort: FirstShort | null;
  readonly promises: readonly PromiseShare[];
  readonly gifts: readonly GiftShare[];
  /** Sites that are built, in a future. */
  readonly builtSites: Spread;
  /** Sites of the plan that are not built, in a future. */
  readonly skippedSites: Spread;
  /** Sites that are skipped in a tenth of the futures or more, most often skipped first. */
  readonly skipped: readonly ({ readonly site: string; readonly name: string } & SampledShare)[];
  /** Running costs over the horizon from which they are called unpaid. */
  readonly unpaidFromDollars: number;
  /** Futures in which so much of them or more stays unpaid. */
  readonly unpaid: SampledShare;
  /** Dollars of them. */
  readonly unpaidDollars: Spread;
  /** Futures in which a cubic yard or more of compost is missing. */
  readonly compostShort: SampledShare;
}

/** A promise with and without planning anew, in the same futures. */
export interface PairedPromise {
  readonly id: string;
  readonly name: string;
  /** Futures in which it is kept through more years where the plan is made anew, and through fewer. */
  readonly longer: SampledShare;
  readonly shorter: SampledShare;
}

/** What planning anew changes, future by future. */
export interface PairedResult {
  readonly futures: number;
  readonly promises: readonly PairedPromise[];
  /** Sites built more, and hours of care left undone more over all years; below 0 where it is less. */
  readonly moreBuilt: Spread;
  readonly moreUnserved: Spread;
}

/** How a plan fares when things do not go as planned. */
export interface FuturesAnswer {
  readonly seed: number;
  readonly headline: string;
  readonly fixed: FuturesResult;
  /** The same with the plan made anew each year by a repair; `null` where time did not allow any. */
  readonly mended: FuturesResult | null;
  /** What that changes in the futures that both met; `null` without any. */
  readonly paired: PairedResult | null;
  /** The numbers that futures are drawn with. */
  readonly odds: readonly OddsSource[];
  /** What is the same in every future, and so not sampled. */
  readonly held: readonly string[];
  /** What time did not allow. */
  readonly leftOut: readonly string[];
}
