import type { CostBand } from '../../overview/plan-overview.js';
import type { FeetPoint } from '../feet-plane.js';

/** The campus in feet about its middle, with every site and what the plan does there. */
export interface CampusPlaces {
  readonly zones: readonly { readonly name: string; readonly ring: readonly FeetPoint[] }[];
  /** In the order of the plan, then those that it leaves out, then those there already. */
  readonly sites: readonly SitePlace[];
}

export interface SitePlace {
  readonly site: string;
  readonly name: string;
  readonly zone: string;
  readonly ring: readonly FeetPoint[];
  readonly areaSqFt: number;
  readonly state: 'soon' | 'later' | 'left-out' | 'there';
  /** `null` where the plan leaves it out. */
  readonly buildType: string | null;
  /** Fiscal year of preparing, or the calendar year in which it was planted; `null` as above. */
  readonly year: string | null;
  /** Its second half, and what is made of it later, in words; empty where nothing follows. */
  readonly later: string;
  readonly cost: CostBand | null;
  /** Hours in its second main care season; `null` where it is not planned. */
  readonly busySeasonHours: number | null;
  readonly gatesNotPassed: number;
}
