import type { Cents } from '#units/cents.js';
import type { CentiHours } from '#units/centihours.js';
import type { CentiYards } from '#units/centiyards.js';
import type { FiscalYear } from '#units/fiscal-year.js';
import type { CompostGrade } from './compost.js';
import type { TaskClass } from './labor.js';
import type { CostLine } from './money.js';

/** One site, what it becomes, and the fiscal year in which it is prepared. */
export interface Placement {
  readonly site: string;
  readonly buildType: string;
  /** Of the whole site, or of its first half. */
  readonly year: FiscalYear;
  /** Fiscal year in which the second half is prepared. Left out: the whole site at once. */
  readonly secondHalf?: FiscalYear;
  /** Later change of the campus that is made at an age of the site. Left out: it stays as it was built. */
  readonly change?: PlacedChange;
}

/** A later change, by its id, at an age in years counted from the first planting. */
export interface PlacedChange {
  readonly id: string;
  readonly age: number;
}

/** Fiscal years in which ground of a placement is prepared: one, or one for each half. */
export function preparedYears({ year, secondHalf }: Placement): FiscalYear[] {
  return secondHalf === undefined ? [year] : [year, secondHalf];
}

/** Names a placement with all that it decides: equal keys, equal placements. */
export function placementKey(of: Placement): string {
  const change = of.change ? `${of.change.id} ${of.change.age}` : '';
  return [of.site, of.buildType, of.year, of.secondHalf ?? '', change].join('\u0000');
}

/** Positions of one type that start in one fiscal year, in the type's start season. */
export interface Hire {
  readonly position: string;
  readonly year: FiscalYear;
  /** Whole, 1 or more. */
  readonly count: number;
}

/** Work days of one kind held in the season of one fiscal year. */
export interface WorkDaysHeld {
  readonly workDay: string;
  readonly year: FiscalYear;
  /** Whole, 1 or more. */
  readonly count: number;
}

/** Whole cubic yards of compost of one grade bought in one season instance. */
export interface CompostPurchase {
  /** Running season index. */
  readonly season: number;
  /** Left out: certified. */
  readonly grade?: 'other';
  readonly cubicYards: number;
}

/** The grade of what is bought. */
export function gradeOf({ grade }: CompostPurchase): CompostGrade {
  return grade ?? 'certified';
}

/** The whole-number decisions. All that follows in a plan is worked out from these. */
export interface Decisions {
  readonly placements: readonly Placement[];
  readonly hires: readonly Hire[];
  readonly workDays: readonly WorkDaysHeld[];
  readonly purchases: readonly CompostPurchase[];
}

/** Nothing decided: what stands already is all there is. */
export const NO_DECISIONS: Decisions = { placements: [], hires: [], workDays: [], purchases: [] };

/** Hours that one source gives one class of work in one season instance. */
export interface LaborEntry {
  readonly season: number;
  /** Pool, work day or position id. */
  readonly source: string;
  readonly taskClass: TaskClass;
  readonly hours: CentiHours;
}

/** Hours of care wanted in one season instance with no one to do them. */
export interface UnservedEntry {
  readonly season: number;
  readonly taskClass: TaskClass;
  readonly hours: CentiHours;
}

/** Dollars of one inflow spent in one year on one line. */
export interface SpendEntry {
  readonly fund: string;
  /** Place of the inflow in the fund's list. */
  readonly inflow: number;
  readonly year: FiscalYear;
  readonly line: CostLine;
  /** The site paid for, on `build` and `care`; left out elsewhere. */
  readonly site?: string;
  readonly amount: Cents;
  /** The award of a reimbursable grant that pays it back to the inflow. Left out: none does. */
  readonly repaidBy?: Award;
}

/** One inflow of a reimbursable grant: how much it pays back at most. */
export interface Award {
  readonly fund: string;
  /** Place of the inflow in the grant's list. */
  readonly inflow: number;
}

/** Whose money an entry is in the end: the award that pays it back, or the inflow itself. */
export function finalPayer({ repaidBy, fund, inflow }: SpendEntry): Award {
  return repaidBy ?? { fund, inflow };
}

/** Compost of both grades at the end of one season instance, after what was given away. */
export interface CompostEntry {
  readonly season: number;
  readonly givenAway: CentiYards;
  readonly stock: CentiYards;
  /** What of it is certified. Left out: all, on a campus without the other grade. */
  readonly certified?: { readonly givenAway: CentiYards; readonly stock: CentiYards };
}

/** A finished schedule with every hour, dollar and cubic yard allotted. */
export interface Plan {
  readonly decisions: Decisions;
  readonly labor: readonly LaborEntry[];
  readonly unserved: readonly UnservedEntry[];
  readonly spending: readonly SpendEntry[];
  readonly compost: readonly CompostEntry[];
}
