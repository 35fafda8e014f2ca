import type { Cents } from '#units/cents.js';
import type { CentiHours } from '#units/centihours.js';
import type { FiscalYear } from '#units/fiscal-year.js';
import type { Provenance } from './component.js';

/** Kinds of work that pools may or may not do. */
export const TASK_CLASSES = [
  'prepare',
  'plant',
  'care-food',
  'care-other',
  'harvest',
  'supervise',
] as const;

export type TaskClass = (typeof TASK_CLASSES)[number];

/** Classes whose hours may go unserved; the others must be served. */
export const MAY_GO_UNSERVED: readonly TaskClass[] = ['care-food', 'care-other', 'harvest'];

/** Effective hours by season id, before supervision. A season left out has none. */
export type SeasonHours = Readonly<Record<string, CentiHours>>;

/** People who do the work, with the hours they have in each season of every year. */
export interface LaborPool {
  readonly id: string;
  readonly name: string;
  readonly kind: 'staff' | 'student' | 'intern' | 'course' | 'loan' | 'contractor';
  readonly tasks: readonly TaskClass[];
  readonly hours: SeasonHours;
  /** First and last year (included) in which the pool is there. Left out: always. */
  readonly from?: FiscalYear;
  readonly to?: FiscalYear;
  readonly provenance: Provenance;
}

/** A kind of volunteer event that may be held up to `mostPerSeason` times in its season each year. */
export interface WorkDay {
  readonly id: string;
  readonly name: string;
  readonly season: string;
  readonly mostPerSeason: number;
  /** Effective hours that one event brings. */
  readonly hoursEach: CentiHours;
  /** Leaders' hours that one event takes: ceil(present / people per leader) x length. */
  readonly leaderHoursEach: CentiHours;
  readonly tasks: readonly TaskClass[];
  readonly peoplePresent: number;
  readonly leaders: number;
  /** Who signs up for one event, and the share that comes. Left out: not recorded. */
  readonly turnout?: { readonly signUps: number; readonly showRate: number };
  readonly provenance: Provenance;
}

/** A kind of position that the plan may propose, in whole steps. */
export interface PositionType {
  readonly id: string;
  readonly name: string;
  /** `recurring` stays once hired; `one-season` is hired for one fiscal year. */
  readonly term: 'recurring' | 'one-season';
  readonly tasks: readonly TaskClass[];
  readonly startSeason: string;
  /** Months from the ask to the first day. */
  readonly leadMonths: number;
  /** Hours in a full year of service, by season. */
  readonly hours: SeasonHours;
  /** Hours in the fiscal year of the start, by season; seasons before the start have none. */
  readonly firstYearHours: SeasonHours;
  /** Loaded cost of a full year, in the price year. */
  readonly annualCost: Cents;
  /** Loaded cost of the fiscal year of the start, in the price year. */
  readonly firstYearCost: Cents;
  /** Equipment bought once at the start, in the price year. */
  readonly oneTimeCost: Cents;
  /** Most that may be held at one time. */
  readonly most: number;
  readonly provenance: Provenance;
}
