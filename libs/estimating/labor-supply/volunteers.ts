export interface VolunteerEvents {
  readonly events: number;
  readonly signUpsEach: number;
  readonly showRate: number;
  readonly hours: number;
  /** Part of an experienced worker's hour, 0 to 1; it already holds breaks and instruction. */
  readonly effectiveness: number;
}

/** Effective hours before leaders are taken off: events x sign-ups x show rate x hours x effectiveness. */
export function volunteerHours(events: VolunteerEvents): number {
  return events.events * events.signUpsEach * events.showRate * events.hours * events.effectiveness;
}

/** People per leader below which volunteers take more than they bring: 1 / effectiveness. */
export function breakEvenPeoplePerLeader(effectiveness: number): number {
  return 1 / effectiveness;
}

/** Hours that money buys of a contractor. Throws on a rate that is not above 0. */
export function contractorHours(dollars: number, dollarsPerHour: number): number {
  if (!(dollarsPerHour > 0)) throw new RangeError('a contractor rate must be above $0 per hour');
  return dollars / dollarsPerHour;
}
