/** Leaders that must be on site: ceil(present / people each). None for nobody. */
export function leadersNeeded(present: number, peopleEach: number): number {
  return Math.ceil(present / peopleEach);
}

export interface WorkDayNet {
  readonly present: number;
  readonly hours: number;
  /** Part of an experienced person's hour that a volunteer's hour is worth. */
  readonly effectiveness: number;
  readonly peopleEach: number;
}

/** Effective hours of a work day less its leaders' hours. Below 0 the day costs more than it brings. */
export function netVolunteerHours({
  present,
  hours,
  effectiveness,
  peopleEach,
}: WorkDayNet): number {
  return present * hours * effectiveness - leadersNeeded(present, peopleEach) * hours;
}
