/** Hours by month against people for one fiscal year, and what rests on the ask. */
export interface StaffingRequest {
  /** The year shown: the first in which a season falls short with those already there, else the last. */
  readonly year: string;
  readonly short: boolean;
  readonly months: readonly StaffingMonth[];
  readonly seasons: readonly StaffingSeason[];
  readonly people: readonly StaffingPeople[];
  /** Within the plan, the season that falls shortest without what is proposed; `null`: none does. */
  readonly worst: { readonly label: string; readonly hours: number } | null;
}

/** One month in hours. A season's hours are shared among its months. */
export interface StaffingMonth {
  readonly label: string;
  readonly careFood: number;
  readonly careOther: number;
  /** Preparing and planting. */
  readonly build: number;
  readonly lead: number;
  /** Of those already there, as far as the work can use them. */
  readonly people: number;
}

export interface StaffingSeason {
  readonly season: string;
  readonly label: string;
  readonly wanted: number;
  readonly people: number;
  /** Hours left undone by those already there. */
  readonly short: number;
  /** The same where no term student and no course came. */
  readonly shortWithoutStudents: number;
}

/** Hours of one pool or kind of work day, as far as the work can use them, by season. */
export interface StaffingPeople {
  readonly name: string;
  readonly bySeason: readonly number[];
}
