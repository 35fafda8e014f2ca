import type { SiteTakeoff } from '../dossier/site-dossier.js';
import type { PaidFrom } from '../paid-from.js';

/** The first fiscal year in which the plan prepares a site: what is ordered, and who does what when. */
export interface WorkYear {
  readonly year: string;
  /** Season in which its sites are prepared and planted, such as `fall 2027 (FY28)`. */
  readonly prepared: string;
  readonly planted: string;
  /** Month by which plants are ordered at the latest, with the longest usual nursery lead. */
  readonly orderPlantsBy: string;
  readonly sites: readonly WorkSite[];
  readonly deliveries: readonly DeliveryWindow[];
  readonly compost: WorkCompost;
  readonly paidFrom: readonly PaidFrom[];
  readonly seasons: readonly WorkSeason[];
}

export interface WorkSite {
  readonly site: string;
  readonly name: string;
  readonly zone: string;
  readonly buildType: string;
  readonly areaSqFt: number;
  readonly edible: boolean;
  readonly takeoff: SiteTakeoff;
  readonly prepareHours: number;
  readonly plantHours: number;
  /** `null`: not known. */
  readonly truckAccess: boolean | null;
  /** What a gate that is not passed says of trucks, structures below or utilities. */
  readonly holds: readonly string[];
}

/** Working days, ISO dates, both included, within which loads are to arrive. A proposal. */
export interface DeliveryWindow {
  readonly site: string;
  readonly material: 'Compost' | 'Wood chips';
  readonly cuYd: number;
  readonly loads: number;
  readonly from: string;
  readonly to: string;
}

export interface WorkCompost {
  /** For the new sites, in the season in which they are prepared. */
  readonly needed: number;
  /** Whole cubic yards that the plan buys in that season, and what they cost in all. */
  readonly bought: number;
  /** What of it is not certified and so goes on no food ground. */
  readonly boughtOther: number;
  readonly boughtDollars: number;
}

/** One season of the year. */
export interface WorkSeason {
  readonly label: string;
  readonly months: string;
  readonly role: 'prepare' | 'plant' | 'care';
  readonly careHours: number;
  readonly harvestHours: number;
  /** Compost spread on established ground, cubic yards. */
  readonly topDress: number;
  readonly workDays: readonly WorkDays[];
}

export interface WorkDays {
  readonly name: string;
  readonly count: number;
  /** People and leaders at each. */
  readonly people: number;
  readonly leaders: number;
}
