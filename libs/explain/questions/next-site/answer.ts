import type { CostBand, Reason, UnknownRow } from '../../overview/plan-overview.js';
import type { Made } from '../common/asked.js';
import type { WorseBy } from '../common/worse-by.js';

/**
 * `recommended`: of those that cannot be told apart from the best found, the first by what differs in
 * fact. `tied`: the others of them. `found-worse`:
 * worse with every seed, not proven. `worse`: proven. `impossible`: proven that no plan has it.
 * `not-found`: neither a plan nor a proof.
 */
export type Standing =
  'recommended' | 'tied' | 'found-worse' | 'worse' | 'impossible' | 'not-found';

/** One thing that can be decided for next year, followed to the end of the plan. */
export interface ChoiceRow {
  readonly id: string;
  /** `TVU-19 East Hall Court`; `No site`. */
  readonly name: string;
  readonly sites: readonly string[];
  readonly buildTypes: readonly string[];
  readonly standing: Standing;
  /** Where it stands against the recommended one, in one sentence with its numbers. */
  readonly sentence: string;
  /** Against the choice named by `comparedWith`; `null` for the best found, and where there is no plan. */
  readonly regret: WorseBy | null;
  /** The best found, or the best of those equal to this one in all tiers before benefit. */
  readonly comparedWith: string | null;
  /** Rounds of search that it got, of all seeds together. */
  readonly rounds: number;
  /** Seeds in which it was found worse than that one, and seeds run. */
  readonly seedsWorse: number;
  readonly seedsRun: number;
  /** First limit of the plan with it, and years by which that comes later than with the recommended one. */
  readonly firstLimit: { readonly resource: string; readonly label: string } | null;
  readonly firstLimitMovesYears: number | null;
  /** Most hours of care in one main season over its first ten years. */
  readonly busySeason: string;
  readonly busySeasonHours: number;
  readonly cost: CostBand | null;
  /** Restricted money that is spent on it. */
  readonly giftsUsed: readonly GiftAmount[];
  /** Given money that lapses in the plan with it, beyond what lapses with the choice that loses least. */
  readonly giftsLost: readonly GiftAmount[];
  readonly openGates: readonly UnknownRow[];
  readonly reasons: readonly Reason[];
  readonly against: readonly Reason[];
}

export interface GiftAmount {
  readonly fund: string;
  readonly name: string;
  readonly dollars: number;
}

/** A site that no plan may build next year until something is found out. */
export interface CouldBecome {
  readonly site: string;
  readonly name: string;
  readonly findOut: readonly UnknownRow[];
  /** Next year's plan with it, had it passed; `null` where that was not worked out. */
  readonly ifPassed: { readonly sentence: string; readonly regret: WorseBy | null } | null;
}

export interface NextSiteAnswer {
  readonly question: 'next-site';
  readonly year: string;
  /** First year in which a candidate that counts may be prepared; `null`: in none. */
  readonly firstOpenYear: string | null;
  readonly headline: string;
  /** The recommended one first, then those tied with it, then the others by how much worse they are. */
  readonly choices: readonly ChoiceRow[];
  readonly couldBecome: readonly CouldBecome[];
  /** Gap at which ties are called, as a share of benefit; `null` where no bound is known. */
  readonly gap: number | null;
  readonly made: Made;
}
