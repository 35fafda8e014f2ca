import type { FiscalYear } from '#units/fiscal-year.js';
import type { TaskClass } from './labor.js';

/** How firmly something was promised. Binding is hard; intended is a tier; an aspiration is points. */
export type Strength = 'binding' | 'intended' | 'aspiration';

/** The measurable test of a promise. Years are included at both ends. */
export type CommitmentTest =
  | {
      /**
       * At least `count` sites that count are prepared in each year; one in halves counts in the year
       * in which enough of it is.
       */
      readonly kind: 'sites-each-year';
      readonly count: number;
      readonly from: FiscalYear;
      readonly to: FiscalYear;
      /** Smallest area that counts as a site. */
      readonly countsFromSqFt: number;
      /** A site that is returned to lawn later still counts. Left out: it does not. */
      readonly returnedCounts?: true;
    }
  | {
      /** The whole site is prepared no later than `by`, as one of `buildTypes` where given. */
      readonly kind: 'named-site';
      readonly site: string;
      readonly by: FiscalYear;
      readonly buildTypes: 'any' | readonly string[];
      /** A site that is returned to lawn later still counts. Left out: it does not. */
      readonly returnedCounts?: true;
    }
  | {
      /** Planted area, existing sites included, by the end of `by`. */
      readonly kind: 'area';
      readonly sqFt: number;
      readonly by: FiscalYear;
      /** A site that was returned to lawn by then still counts. Left out: it does not. */
      readonly returnedCounts?: true;
    }
  | {
      /** No recurring position starts before the year opens. */
      readonly kind: 'no-new-positions-before';
      readonly year: FiscalYear;
    }
  | {
      /** Care of these classes is served in full in these seasons. */
      readonly kind: 'no-unserved-care';
      readonly classes: readonly TaskClass[];
      /** Season ids; `all` for every season. */
      readonly seasons: 'all' | readonly string[];
    }
  | {
      /** Every site built is one of these types, and is simplified to no other. */
      readonly kind: 'only-build-types';
      readonly buildTypes: readonly string[];
    }
  | {
      /** No zone gets more than `most` of the program's sites above any other, counted at the horizon. */
      readonly kind: 'zone-balance';
      /** Sites in each zone, existing included, that the campus hopes for at least. */
      readonly leastPerZone: number;
      /** A site that was returned to lawn by then still counts. Left out: it does not. */
      readonly returnedCounts?: true;
    };

/** A promise with an owner, a date and a test. */
export interface Commitment {
  readonly id: string;
  readonly name: string;
  readonly strength: Strength;
  readonly test: CommitmentTest;
  readonly saidBy: string;
  readonly saidTo: string;
  readonly date: string;
  readonly document: string;
  readonly public: boolean;
  /** Points that an aspiration earns when kept in full; 0 for the other strengths. */
  readonly points: number;
}
