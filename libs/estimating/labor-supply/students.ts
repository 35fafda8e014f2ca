/** Most hours a student may be asked for in a week, by common campus rule: in term, and in breaks. */
export const MOST_TERM_HOURS = 20;
export const MOST_BREAK_HOURS = 40;

export interface StudentSeason {
  readonly students: number;
  /** Weeks with classes, exam weeks not counted. */
  readonly termWeeks: number;
  /** Weeks of exams: nobody works. Kept so that a calendar's weeks add up. */
  readonly examWeeks: number;
  readonly breakWeeks: number;
  readonly termHoursPerWeek: number;
  readonly breakHoursPerWeek: number;
  /** Part of an experienced worker's hour, 0 to 1. */
  readonly productivity: number;
}

/** Effective hours of a season: people x (term weeks x hours + break weeks x hours) x productivity. */
export function studentHours(season: StudentSeason): number {
  const term = season.termWeeks * Math.min(MOST_TERM_HOURS, season.termHoursPerWeek);
  const free = season.breakWeeks * Math.min(MOST_BREAK_HOURS, season.breakHoursPerWeek);
  return season.students * (term + free) * season.productivity;
}

export interface CourseSeason {
  readonly sections: number;
  readonly studentsEach: number;
  /** Laboratory hours of each student on the site. */
  readonly labHours: number;
  readonly effectiveness: number;
}

/** Effective hours of service-learning sections. They are instruction first, never free labor. */
export function courseHours({
  sections,
  studentsEach,
  labHours,
  effectiveness,
}: CourseSeason): number {
  return sections * studentsEach * labHours * effectiveness;
}
