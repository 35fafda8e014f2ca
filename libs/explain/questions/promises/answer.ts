import type { Strength } from '#domain/commitment.js';
import type { Made } from '../common/asked.js';
import type { PlanMeasures } from '../common/plan-measures.js';
import type { WorseBy } from '../common/worse-by.js';
import type { MeasureChange } from '../courses/difference.js';

/** One promise with and without. */
export interface PromisePrice {
  readonly id: string;
  readonly name: string;
  readonly strength: Strength;
  /** Of verified plans of equal work; `null` where none was found in the time. */
  readonly withIt: PlanMeasures | null;
  readonly withoutIt: PlanMeasures | null;
  /** What letting it go changes: without less with. */
  readonly changes: readonly MeasureChange[];
  /** Loss of benefit by the promise where that is what it costs; `null` where no plan was found. */
  readonly benefitCost: WorseBy | null;
  readonly sentence: string;
}

/** The yearly promise let go in some years. */
export interface SkippedYears {
  readonly years: readonly string[];
  readonly measures: PlanMeasures | null;
  readonly changes: readonly MeasureChange[];
  readonly sentence: string;
}

export interface PromisesAnswer {
  readonly question: 'promises';
  readonly headline: string;
  readonly promises: readonly PromisePrice[];
  /** Last year to which the yearly promise can be kept, as `limits` finds it with positions. */
  readonly lastKept: string | null;
  /** It is proven that no plan keeps it through this year; `null`: not proven for any. */
  readonly impossibleThrough: string | null;
  readonly lastKeptSentence: string;
  readonly skipping: readonly SkippedYears[];
  /** What a promise may bring that no number here holds. */
  readonly notModelled: string;
  readonly made: Made;
}
