import type { LimitRow } from '../../overview/plan-overview.js';
import type { Made } from '../common/asked.js';
import type { TriedPrefix } from './prefixes.js';

/** To which year the promise can be kept with one resource limited, or with all of them. */
export interface PromiseLimit {
  readonly id: string;
  readonly name: string;
  /** A plan that keeps it through this year was found; `null`: not even the first year. */
  readonly keptThrough: string | null;
  /** It is proven that no plan keeps it through this year; `null`: not proven for any. */
  readonly impossibleThrough: string | null;
  /** The candidates end it no later than this resource does. */
  readonly sitesEndItFirst: boolean;
  readonly tried: readonly TriedPrefix[];
  readonly sentence: string;
}

export interface LimitsAnswer {
  readonly question: 'limits';
  readonly headline: string;
  readonly promise: string;
  /** Of this plan, without hires that are only proposed and money that is only pledged; the earliest first. */
  readonly ofPlan: readonly LimitRow[];
  /** The same on hours of a whole year, which hide what runs short in a season. */
  readonly annual: LimitRow;
  /** Of the promise: each resource alone, the earliest first. */
  readonly ofPromise: readonly PromiseLimit[];
  /** Of the promise: all together, without new positions and with those that may be proposed. */
  readonly together: readonly PromiseLimit[];
  readonly made: Made;
}
