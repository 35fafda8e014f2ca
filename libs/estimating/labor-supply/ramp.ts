export interface Ramp {
  readonly rampMonths: number;
  /** Productivity while ramping up, 0 to 1. */
  readonly rampProductivity: number;
}

/** Hours of each month of a start year, from `startsAfter` months into it: nothing, reduced, then full. */
export function monthsWorked(
  fullMonthHours: readonly number[],
  startsAfter: number,
  ramp: Ramp,
): number[] {
  return fullMonthHours.map((hours, index) => {
    if (index < startsAfter) return 0;
    return index < startsAfter + ramp.rampMonths ? hours * ramp.rampProductivity : hours;
  });
}

/** Planned attrition as a share of hours: each year `attrition` of positions stand empty for some months. */
export function vacancyShare(attrition: number, monthsEmpty: number): number {
  return (attrition * monthsEmpty) / 12;
}

/** Loaded yearly cost: salary x (1 + benefits). */
export function loadedCost(salary: number, benefits: number): number {
  return salary * (1 + benefits);
}
