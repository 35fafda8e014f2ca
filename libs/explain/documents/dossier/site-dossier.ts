import type { Evidence, Gate, Position } from '#domain/site.js';
import type { FeetPoint } from '../feet-plane.js';
import type { PaidFrom } from '../paid-from.js';
import type { CostBand, UnknownRow } from '../../overview/plan-overview.js';

/** All that reviewers of one candidate ask, worked out from the campus and the plan. */
export interface SiteDossier {
  readonly site: string;
  readonly name: string;
  readonly zone: string;
  readonly areaSqFt: number;
  /** As the plan builds it; a site outside the plan as the first type that it may become. */
  readonly buildType: string;
  readonly otherTypes: readonly string[];
  /** `null`: the plan does not build it. */
  readonly planned: {
    readonly year: string;
    readonly prepared: string;
    readonly planted: string;
    /** What is made of it later, with the age of the site. Left out: it stays as it was built. */
    readonly change?: string;
  } | null;
  readonly cost: CostBand;
  readonly sketch: SiteSketch;
  readonly components: readonly ComponentArea[];
  readonly takeoff: SiteTakeoff;
  readonly hours: SiteHours;
  /** What its build is paid from in the plan, and its care over ten years. */
  readonly money: SiteMoney;
  readonly facts: readonly SiteFact[];
  readonly gates: readonly Gate[];
  readonly openQuestions: readonly UnknownRow[];
  readonly evidence: readonly (Evidence & { readonly expired: boolean })[];
  /** Works, order with other sites, promises, and remarks: a sentence each, with its source. */
  readonly bearings: readonly { readonly sentence: string; readonly source: string }[];
  readonly cautions: readonly string[];
}

export interface SiteSketch {
  readonly ring: readonly FeetPoint[];
  readonly neighbors: readonly { readonly label: string; readonly ring: readonly FeetPoint[] }[];
  readonly widthFt: number;
  readonly heightFt: number;
  readonly perimeterFt: number;
  readonly center: Position;
}

export interface ComponentArea {
  readonly name: string;
  readonly share: number;
  readonly areaSqFt: number;
  /** Loose depth by the build type, before root protection. */
  readonly compostInches: number;
  readonly chipInches: number;
}

/** Quantities with waste and laps included. */
export interface SiteTakeoff {
  readonly compostCuYd: number;
  readonly chipsCuYd: number;
  readonly compostLoads: number;
  readonly chipLoads: number;
  readonly pounds: number;
  readonly netCoverSqFt: number;
  readonly cardboardSqFt: number;
  readonly topDressCuYdPerYear: number;
  /** `null`: how much lies in root protection is not known, so full depth is counted. */
  readonly rootProtectedShare: number | null;
}

export interface SiteHours {
  readonly prepare: number;
  readonly plant: number;
  readonly seasons: readonly string[];
  /** Care and harvest at some ages, in hours by season. */
  readonly care: readonly { readonly age: number; readonly bySeason: readonly number[] }[];
  /** Hours of mowing a year that end; `null` where the cover is not known. */
  readonly mowingEnds: number | null;
}

export interface SiteMoney {
  readonly paidFrom: readonly PaidFrom[];
  readonly tenYearsConstant: number;
  readonly tenYearsNominal: number;
  readonly constantDollarsOf: string;
}

export interface SiteFact {
  readonly label: string;
  /** `null`: not known. */
  readonly value: string | null;
}
