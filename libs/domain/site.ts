import type { FiscalYear } from '#units/fiscal-year.js';
import type { Known } from '#units/known.js';
import type { Provenance } from './component.js';
import type { MeasuredValue } from './measured.js';
import type { SiteSurvey, SiteTree } from './survey.js';
import type { RainTank } from './weather.js';

/** Longitude and latitude in degrees, WGS 84. */
export type Position = readonly [longitude: number, latitude: number];

/** RFC 7946 polygon: closed rings, the outer one first, then holes. */
export type Rings = readonly (readonly Position[])[];

export type GateKind =
  | 'contamination'
  | 'utilities'
  | 'construction'
  | 'root-protection'
  | 'slope'
  | 'access'
  | 'heritage'
  | 'flood-or-wetland'
  | 'fire-lane'
  | 'structure'
  | 'accessibility';

/** A test that a score may never outweigh. */
export interface Gate {
  readonly kind: GateKind;
  readonly status: 'pass' | 'fail' | 'unknown';
  /** What was found, or what is not known. */
  readonly note: string;
  /** Build types that it bars while not passed. */
  readonly bars: 'all' | 'edible' | readonly string[];
  /** What would clear it, and who decides. */
  readonly clearedBy: string;
  /** For `unknown`: the first year for which the campus plans on a pass. Left out: never. */
  readonly plannedClearFrom?: FiscalYear;
}

/** A dated observation. */
export interface Evidence {
  readonly fact: string;
  readonly value: string;
  readonly method: string;
  readonly observer: string;
  readonly date: string;
  readonly expires?: string;
}

/** What is known of the ground. Each fact may be unknown. */
export interface SiteFacts {
  readonly cover: Known<string>;
  readonly soil: Known<string>;
  readonly ph: Known<number>;
  readonly organicMatterPercent: Known<number>;
  /** Total lead, mg/kg. A screening result, not a clearance. */
  readonly leadMgPerKg: Known<number>;
  readonly slopePercent: Known<number>;
  /** Mean daily sun from 1 May to 15 September. */
  readonly sunHours: Known<number>;
  readonly walkersPerDay: Known<number>;
  readonly waterFeet: Known<number>;
  readonly kitchenFeet: Known<number>;
  readonly truckAccess: Known<boolean>;
  /** Share of the site within root protection areas, 0 to 1. */
  readonly rootProtectedShare: Known<number>;
}

interface SiteBase {
  readonly id: string;
  readonly name: string;
  readonly zone: string;
  readonly boundary: Rings;
  /** Area that planning uses, in square feet. */
  readonly areaSqFt: number;
  readonly facts: SiteFacts;
  readonly gates: readonly Gate[];
  readonly evidence: readonly Evidence[];
  /** All trees whose roots may reach into it. Left out: they were not measured. */
  readonly trees?: readonly SiteTree[];
  /** Left out: nothing of it is known. */
  readonly survey?: SiteSurvey;
  /** Left out: there is none. */
  readonly rainTank?: RainTank;
  /** Measured coefficients that hold here, before those of the campus. Left out: none. */
  readonly overrides?: readonly MeasuredValue[];
}

/** A place being considered. */
export interface CandidateSite extends SiteBase {
  readonly stage: 'candidate';
  readonly buildTypes: readonly string[];
  /** First year in which it may be prepared (included). Left out: the first year of the plan. */
  readonly earliest?: FiscalYear;
  /** Last year in which it may be prepared (included). Left out: the last year of the horizon. */
  readonly latest?: FiscalYear;
  /** Capital cost of this place against the type's cost per square foot; 1 where nothing is special. */
  readonly costFactor: number;
  /** It may be built in two halves, the second up to so many years after the first. Left out: at once only. */
  readonly phasing?: { readonly mostYearsApart: number };
  /** Ids of the later changes that may be made to it. Left out: none. */
  readonly laterChanges?: readonly string[];
  /** The campus accepts a build that sure works will end; what is lost is counted. Left out: it does not. */
  readonly temporary?: true;
  readonly notes: readonly string[];
}

/** A site planted before the plan begins. Its care counts from the first season. */
export interface ExistingSite extends SiteBase {
  readonly stage: 'existing';
  readonly buildType: string;
  /** Calendar year of the planting season in which it was planted. */
  readonly plantedYear: number;
}

export type Site = CandidateSite | ExistingSite;

/** A set of works that takes ground away for a time. */
export interface ConstructionConflict {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly sites: readonly string[];
  readonly from: FiscalYear;
  /** Last year of the works (included). */
  readonly to: FiscalYear;
  readonly certaintyPercent: number;
  readonly source: string;
}

/** `before` is built at least `yearsApart` years before `after`. */
export interface Precedence {
  readonly before: string;
  readonly after: string;
  readonly yearsApart: number;
  readonly reason: string;
}

/** At most one of these sites is ever built. */
export interface ExclusiveGroup {
  readonly id: string;
  readonly sites: readonly string[];
  readonly reason: string;
}

export type { Provenance };
